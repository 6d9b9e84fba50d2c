package org.benchleaf.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The plans of the classes asked for last. To find a plan takes seconds, and a class asks for the same one again: in each language, and
 * after each edit of words, which move nothing in time.
 */
public final class KeptPlans {

    /** A class that is edited while its pages are previewed comes in many states, of which only the last is of use. */
    private static final int MOST = 16;
    private static final Map<Classroom, Optional<Timetable>> PLANS = new ConcurrentHashMap<>();
    private static final Map<Timetable, List<Planner.Gain>> GAINS = new ConcurrentHashMap<>();

    private KeptPlans() {
    }

    /** What {@link Planner#plan} gives. */
    public static Optional<Timetable> plan(Classroom classroom, Floor floor) {
        return room(PLANS, classroom).computeIfAbsent(classroom, asked -> Planner.plan(asked, floor));
    }

    /** What {@link Planner#gains} gives. */
    public static List<Planner.Gain> gains(Timetable timetable) {
        return room(GAINS, timetable).computeIfAbsent(timetable, asked -> List.copyOf(Planner.gains(asked)));
    }

    private static <K, V> Map<K, V> room(Map<K, V> kept, K asked) {
        if (kept.size() >= MOST && !kept.containsKey(asked)) {
            kept.clear();
        }
        return kept;
    }
}
