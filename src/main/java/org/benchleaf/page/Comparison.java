package org.benchleaf.page;

import java.util.Map;

/**
 * The same view before and after; complete as two pictures, with a slider where scripts run.
 *
 * @param before the picture before
 * @param after the picture after
 * @param changed one sentence on what changed
 * @param words fixed labels
 */
public record Comparison(Photo before, Photo after, String changed, Map<String, String> words) implements Block {
}
