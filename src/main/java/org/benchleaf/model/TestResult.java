package org.benchleaf.model;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * What came of a spot test.
 *
 * @param written as the author wrote it
 * @param word the word of the closed list that it means, such as {@code bleeds}
 * @param group what rules take it for
 */
public record TestResult(String written, String word, Group group) {

    /** What rules take a result for; only {@link #NO_CHANGE} clears a liquid. */
    public enum Group {
        NO_CHANGE("no change"), SOME_CHANGE("some change"), CHANGE("change"),
        /** An indicator's answer, which is good or bad only by the rule that asks for it. */
        FOUND("found"), NOT_TESTED("not tested"), NOT_KNOWN("not known");

        private final String word;

        Group(String word) {
            this.word = word;
        }

        /** The word as written in the table of words and in a rule file. */
        public String word() {
            return word;
        }

        /** The group written with that word. */
        public static Optional<Group> of(String word) {
            return Stream.of(values()).filter(group -> group.word.equals(word)).findFirst();
        }
    }

    /** Whether a test was made and its result is known. */
    public boolean isKnown() {
        return group != Group.NOT_TESTED && group != Group.NOT_KNOWN;
    }

    /** Whether anything moved, came off or altered; a little counts. */
    public boolean isChange() {
        return group == Group.SOME_CHANGE || group == Group.CHANGE;
    }

    /** Whether the test passed. */
    public boolean isPassed() {
        return group == Group.NO_CHANGE;
    }
}
