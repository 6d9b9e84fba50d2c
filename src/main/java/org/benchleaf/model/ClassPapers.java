package org.benchleaf.model;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.Place;

/**
 * What a class is for and how its papers are issued.
 *
 * @param published whether its pages may stand in the site beside those of its case
 * @param aims what the class is about, one sentence each
 * @param sheets what is worked on
 * @param like what a practice sheet is to be like; empty if not stated
 * @param making how practice sheets come to be; empty if not stated
 * @param issue under which number the papers are issued; empty if they are not
 * @param changes what is different from the issue before
 * @param outcomes what trainees can do at the end
 * @param trainees codes of those who take part, in the order of the stations; never names
 * @param practice when a trainee counts as practised in a step
 * @param issued what was handed out before, the oldest first
 * @param assessor who marks while every supervisor is with others, a role; empty if not stated
 */
public record ClassPapers(boolean published, List<String> aims, Sheets sheets, Optional<String> like,
        Optional<SheetMaking> making, Optional<Issue> issue, List<String> changes, List<Outcome> outcomes, List<String> trainees,
        Practice practice, List<Issued> issued, Optional<String> assessor) {

    public ClassPapers {
        aims = List.copyOf(aims);
        changes = List.copyOf(changes);
        outcomes = List.copyOf(outcomes);
        trainees = List.copyOf(trainees);
        issued = List.copyOf(issued);
    }

    /** What a class works on. */
    public enum Sheets {
        /** Sheets made for practice. */
        PRACTICE("practice"),
        /** The object of the case, or one like it. */
        OBJECT("object");

        private final String word;

        Sheets(String word) {
            this.word = word;
        }

        /** What is written with that word. */
        public static Optional<Sheets> of(String word) {
            return List.of(values()).stream().filter(sheets -> sheets.word.equals(word)).findFirst();
        }
    }

    /**
     * An issue of the papers of a class.
     *
     * @param number counts up from 1
     * @param on the day of issue
     * @param replaces number of the issue before; empty for the first
     * @param validUntil the last day on which it may be worked from
     * @param preparedBy a role, never a name
     * @param approvedBy a role; what nobody has approved is a draft
     */
    public record Issue(int number, LocalDate on, Optional<Integer> replaces, Optional<LocalDate> validUntil,
            Optional<String> preparedBy, Optional<String> approvedBy, Place place) {

        /** Whether nobody has approved it yet. */
        public boolean isDraft() {
            return approvedBy.isEmpty();
        }
    }

    /**
     * What an issue stated when it was handed out.
     *
     * @param mark of everything that its papers stated
     * @param amounts as they stood there, by id of the solution or material
     * @param cautions keys of the cautions of each step, by its id
     */
    public record Issued(int number, LocalDate on, String mark, Map<String, Amount> amounts,
            Map<String, List<String>> cautions) {
        public Issued {
            amounts = Collections.unmodifiableMap(new LinkedHashMap<>(amounts));
            cautions = Collections.unmodifiableMap(new LinkedHashMap<>(cautions));
        }
    }

    /**
     * How much of a solution is made or of a material needed, as papers tell it.
     *
     * @param each the amount, of one batch where it is made in batches
     * @param batches in how many batches it is made; 1 for a material
     */
    public record Amount(String each, int batches) {

        /** Both on one line, such as "5.8 L, 16 times"; marks of issues are made of it. */
        public String text() {
            return batches > 1 ? each + ", " + batches + " times" : each;
        }
    }

    /**
     * Something that a trainee can be seen doing.
     *
     * @param at id of the step at which it is looked for
     * @param will the deed, such as "lowers a misted sheet on its carrier"
     * @param metWhen what must be seen; empty if not stated
     * @param notYet what shows that it is not yet so; empty if not stated
     * @param must whether nothing else makes up for it
     */
    public record Outcome(String at, String will, Optional<String> metWhen, Optional<String> notYet, boolean must,
            Place place) {
    }
}
