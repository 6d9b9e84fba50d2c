package org.benchleaf.page;

import java.util.List;
import java.util.Map;

/**
 * The steps as they run down the bench: the clock at the left, the action, the amount where the hand goes.
 *
 * @param steps in order
 * @param words fixed labels
 */
public record BenchStrip(List<BenchStep> steps, Map<String, String> words) implements Block {

    public BenchStrip {
        steps = List.copyOf(steps);
    }
}
