package org.benchleaf.model;

import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.message.Place;

/**
 * A reason recorded for departing from a rule, or for leaving open whether it was kept.
 *
 * @param rule the rule's id
 * @param step id of the step it concerns; empty if it concerns the case
 * @param past what the record of a treatment that is done tells of the rule; empty where it is answered by the reason alone
 * @param why the reason
 */
public record Reason(String rule, Optional<String> step, Optional<Past> past, String why, Place place) {

    /** What the record of a treatment that is done tells of a rule that it cannot answer any more. */
    public enum Past {
        /** Nothing. */
        NOT_RECORDED("not recorded"),
        /** Nothing, but whoever did the treatment says that the rule was kept. */
        NOT_WRITTEN_DOWN("done, not written down"),
        /** That the rule was not kept. */
        NOT_DONE("not done");

        private final String word;

        Past(String word) {
            this.word = word;
        }

        /** The words as written in a case file. */
        public String word() {
            return word;
        }

        /** What is written with these words. */
        public static Optional<Past> named(String word) {
            return Stream.of(values()).filter(past -> past.word.equals(word)).findFirst();
        }
    }
}
