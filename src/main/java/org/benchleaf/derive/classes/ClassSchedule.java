package org.benchleaf.derive.classes;

import java.util.List;
import org.benchleaf.model.ClassDay;
import org.benchleaf.model.CourseClass;
import org.benchleaf.plan.Delay;
import org.benchleaf.plan.Floor;
import org.benchleaf.plan.KeptPlans;
import org.benchleaf.plan.Planner;
import org.benchleaf.plan.Timetable;

/**
 * When each station of a class does what; minutes count from the start of the class.
 *
 * @param course the class as written
 * @param briefing minutes for which those who begin together read the briefing first
 * @param floor no plan can end before it
 * @param timetable every part of every station
 * @param delays where a station waits, and why
 */
public record ClassSchedule(CourseClass course, int briefing, Floor floor, Timetable timetable, List<Delay> delays) {

    public ClassSchedule {
        delays = List.copyOf(delays);
    }

    /**
     * What one more of a thing that runs out would give, which takes a plan for each; empty where all follow the same card.
     */
    List<Planner.Gain> gains() {
        return course.day().rhythm() == ClassDay.Rhythm.SAME_CARD ? List.of() : KeptPlans.gains(timetable);
    }
}
