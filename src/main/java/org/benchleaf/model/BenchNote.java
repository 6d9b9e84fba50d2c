package org.benchleaf.model;

import java.util.List;
import java.util.Set;

/**
 * How work around a class is done, where no case tells it.
 *
 * @param forWork words of work, as {@link BenchNeed} has them, or one of {@link #OWN_WORDS}; all of them must be work of the class
 * @param about what it is about, in lower case
 * @param at where it is needed: kinds of steps that practice sheets go through, what the technician does, pieces of a station's work
 * @param things what it takes, by its name on a list of the class
 * @param words what is done
 */
public record BenchNote(List<String> forWork, String about, List<String> at, List<String> things, String words) {

    /** Practice sheets are worked on. */
    public static final String PRACTICE_SHEETS = "practice sheets";
    /** Practice sheets are tried with liquids before the class. */
    public static final String TRIAL = "trial";
    /** Practice sheets are kept under a volatile wax until the class. */
    public static final String WAXED_SHEETS = "waxed practice sheets";

    /** What is left over is collected in cans of the class. */
    public static final String WASTE_IN_CANS = "waste in cans";

    /** Words of work beside those of {@link BenchNeed}. */
    public static final Set<String> OWN_WORDS = Set.of(PRACTICE_SHEETS, TRIAL, WAXED_SHEETS, WASTE_IN_CANS);

    public BenchNote {
        forWork = List.copyOf(forWork);
        at = List.copyOf(at);
        things = List.copyOf(things);
    }

    /** Whether it concerns a class of this work. */
    public boolean concerns(Set<String> work) {
        return work.containsAll(forWork);
    }
}
