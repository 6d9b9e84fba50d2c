package org.benchleaf.model;

import java.util.List;

/**
 * What a new step of a kind usually needs in its case file.
 *
 * @param lines of the case format, below the step; may be empty
 * @param risky whether the proposal tells what may go wrong with it
 */
public record FirstStep(List<String> lines, boolean risky) {

    /** Of a kind that needs nothing of its own. */
    public static final FirstStep PLAIN = new FirstStep(List.of(), false);

    public FirstStep {
        lines = List.copyOf(lines);
    }
}
