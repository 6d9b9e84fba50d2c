package org.benchleaf.model;

import java.util.List;

/**
 * The outside values of one calculation.
 *
 * @param calculation its name
 * @param about what the values are, their source and the allowed difference: the file's first line
 * @param rows the values
 */
public record CheckValues(String calculation, String about, List<CheckValue> rows) {

    public CheckValues {
        rows = List.copyOf(rows);
    }
}
