package org.benchleaf.page;

import java.util.Map;

/**
 * What was changed at the bench, and the way back to the sheet's own values; shown where scripts run and something was changed.
 *
 * @param figures the file of the case's figures as a chain, as seen from the page
 * @param words fixed labels
 */
public record BenchSums(String figures, Map<String, String> words) implements Block {
}
