package org.benchleaf.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.message.Place;

/**
 * What may be done to which medium or support.
 *
 * @param actions the columns
 * @param rows the rows
 */
public record Matrix(List<Action> actions, List<Row> rows) {

    /** A matrix without rows. */
    public static final Matrix EMPTY = new Matrix(List.of(), List.of());

    public Matrix {
        actions = List.copyOf(actions);
        rows = List.copyOf(rows);
    }

    /** The verdict on an action. */
    public enum Verdict {
        /** Not done. */
        STOP("X", "stop"),
        /** Done only with a stated reason and a passed test. */
        REASON("R", "needs a stated reason and a passed test"),
        /** Allowed after a test. */
        ALLOWED("A", "allowed after a test"),
        /** Has no bearing. */
        NONE("-", "has no bearing");

        private final String sign;
        private final String words;

        Verdict(String sign, String words) {
            this.sign = sign;
            this.words = words;
        }

        /** The sign as written in the matrix. */
        public String sign() {
            return sign;
        }

        /** In words, for the page. */
        public String words() {
            return words;
        }

        /** The verdict written with that sign. */
        public static Optional<Verdict> of(String sign) {
            return Stream.of(values()).filter(verdict -> verdict.sign.equals(sign)).findFirst();
        }
    }

    /**
     * One action.
     *
     * @param id such as {@code immersion}
     * @param name in words
     * @param wet whether a liquid that reaches the medium does it, so that a fixed and re-tested medium is out of it
     * @param is when a step does it, asked of each medium or support that the step touches
     */
    public record Action(String id, String name, boolean wet, Condition is) {
    }

    /**
     * One medium or support.
     *
     * @param id such as {@code iron-gall-ink}
     * @param name in words
     * @param also every word of a case file that means this row, in small letters
     * @param verdicts by action id
     * @param note what the pair is about
     * @param backing where it comes from
     * @param changes what the studio changed, by action id
     */
    public record Row(String id, String name, List<String> also, Map<String, Verdict> verdicts, Optional<String> note,
            Rule.Backing backing, boolean ofStudio, Map<String, Rule.Change> changes, Place place) {

        public Row {
            also = List.copyOf(also);
            verdicts = Map.copyOf(verdicts);
            changes = Map.copyOf(changes);
        }

        /** The verdict on an action; without one, the action has no bearing. */
        public Verdict on(String action) {
            return verdicts.getOrDefault(action, Verdict.NONE);
        }
    }

    /** The rows that a word of a case file means; usually one, none for a word that the matrix does not have. */
    public List<Row> rowsFor(String word) {
        String wanted = word.strip().toLowerCase(java.util.Locale.ROOT);
        return rows.stream().filter(row -> row.id().equals(wanted) || row.name().equalsIgnoreCase(wanted)
                || row.also().contains(wanted)).toList();
    }

    /** The id under which a reason for one cell is recorded, such as {@code groundwood-immersion}. */
    public static String cellId(Row row, Action action) {
        return row.id() + "-" + action.id();
    }
}
