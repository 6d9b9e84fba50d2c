package org.benchleaf.page;

import java.util.List;
import java.util.Map;

/**
 * What to do now, one action a screen, for a phone at the bench; shown where scripts run.
 *
 * @param issue changes when what the screens say changes
 * @param caseId the case that the record belongs to
 * @param closes when the studio closes, as {@code 17:30}; later times of day are not told
 * @param stages the steps in order, for the times of the day
 * @param screens in order
 * @param words fixed labels
 */
public record BenchView(String issue, String caseId, String closes, List<Stage> stages, List<BenchScreen> screens,
        Map<String, String> words) implements Block {

    public BenchView {
        stages = List.copyOf(stages);
        screens = List.copyOf(screens);
    }

    /**
     * One step on the clock of the day.
     *
     * @param anchor on the sheet
     * @param id in the case file
     * @param name number and kind
     * @param least how long it takes at least, in seconds
     * @param after anchors of the steps that must be finished first
     * @param waits how long it waits at least when they are, in seconds
     */
    public record Stage(String anchor, String id, String name, long least, List<String> after, long waits) {
        public Stage {
            after = List.copyOf(after);
        }
    }
}
