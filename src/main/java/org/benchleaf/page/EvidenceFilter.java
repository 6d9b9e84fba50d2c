package org.benchleaf.page;

import java.util.List;
import java.util.Map;

/**
 * Choices that hide the rows of {@link EvidencePlot}s on a page; they are shown only where scripts run.
 *
 * @param choices in order
 * @param words fixed labels; those with [n] and [m] are for the script
 */
public record EvidenceFilter(List<Choice> choices, Map<String, String> words) implements Block {

    public EvidenceFilter {
        choices = List.copyOf(choices);
    }

    /** A list to choose one value from, by which rows are kept. */
    public record Choice(String id, String label, List<Value> values) {
        public Choice {
            values = List.copyOf(values);
        }
    }

    /** A value: how a row names it, and its words. */
    public record Value(String key, String label) {
    }
}
