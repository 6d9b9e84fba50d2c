package org.benchleaf.model;

import java.util.Map;

/**
 * One value from outside that a calculation is checked against.
 *
 * @param calculation the name of the calculation
 * @param id the row's own id
 * @param inputs what is put in, as an author would write it, in the order of the file
 * @param output the key of the output that is compared
 * @param expected the published value, in the output's unit, or a word
 * @param tolerance the allowed difference, in the output's unit
 * @param source where the value comes from
 * @param status how that source was consulted: read, secondary, from memory, or worked by hand
 */
public record CheckValue(String calculation, String id, Map<String, String> inputs, String output, String expected,
        double tolerance, String source, String status) {
}
