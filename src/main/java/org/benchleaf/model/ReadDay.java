package org.benchleaf.model;

import org.benchleaf.message.Place;

/**
 * When a result was read.
 *
 * @param result where the result stands
 * @param before whether before the treatment; else after it
 */
public record ReadDay(Place result, boolean before, StatedDay day) {
}
