package org.benchleaf.model;

import java.util.List;
import java.util.Set;

/**
 * How work around a class is done, where no case tells it.
 *
 * @param forWork words of work, as {@link BenchNeed} has them, or one of {@link #OWN_WORDS}; all of them must be work of the class
 * @param about what it is about, in lower case
 * @param words what is done
 */
public record BenchNote(List<String> forWork, String about, String words) {

    /** Practice sheets are worked on. */
    public static final String PRACTICE_SHEETS = "practice sheets";
    /** Practice sheets are tried with liquids before the class. */
    public static final String TRIAL = "trial";

    /** What is left over is collected in cans of the class. */
    public static final String WASTE_IN_CANS = "waste in cans";

    /** Words of work beside those of {@link BenchNeed}. */
    public static final Set<String> OWN_WORDS = Set.of(PRACTICE_SHEETS, TRIAL, WASTE_IN_CANS);

    public BenchNote {
        forWork = List.copyOf(forWork);
    }

    /** Whether it concerns a class of this work. */
    public boolean concerns(Set<String> work) {
        return work.containsAll(forWork);
    }
}
