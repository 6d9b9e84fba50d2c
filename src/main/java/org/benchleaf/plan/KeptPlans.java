package org.benchleaf.plan;

import java.util.List;
import java.util.Optional;

/**
 * The plans of the classes asked for last. To find a plan takes seconds, and a class asks for the same one again: in each language, and
 * after each edit of words, which move nothing in time.
 */
public final class KeptPlans {

    /** A class that is edited while its pages are previewed comes in many states, of which only the last is of use. */
    private static final int MOST = 16;
    private static final LastAsked<Classroom, Optional<Timetable>> PLANS = new LastAsked<>(MOST);
    private static final LastAsked<Timetable, List<Planner.Gain>> GAINS = new LastAsked<>(MOST);

    private KeptPlans() {
    }

    /** What {@link Planner#plan} gives. */
    public static Optional<Timetable> plan(Classroom classroom, Floor floor) {
        return PLANS.of(classroom, asked -> Planner.plan(asked, floor));
    }

    /** What {@link Planner#gains} gives. */
    public static List<Planner.Gain> gains(Timetable timetable) {
        return GAINS.of(timetable, asked -> List.copyOf(Planner.gains(asked)));
    }
}
