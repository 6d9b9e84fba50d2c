package org.benchleaf.page;

import java.util.Map;

/**
 * What a substance can do: signal word, pictograms, statements, what to do, why.
 *
 * @param hazard what it can do
 * @param words fixed labels
 */
public record HazardCard(Hazard hazard, Map<String, String> words) implements Block {
}
