package org.benchleaf.derive.time;

import java.time.LocalDateTime;
import java.util.List;
import org.benchleaf.quantity.Quantity;

/**
 * When each step can begin and end, counted from the start of the first.
 *
 * @param steps in the order of the case
 * @param complete whether the time of every step is known; where not, total and hands-on are sums of the known alone
 * @param total from the first start to the last end, without time off between steps
 * @param handsOn time that needs a person
 * @param days the same laid out on the studio's working days; empty if no start is stated
 */
public record Timeline(List<TimedStep> steps, boolean complete, Quantity total, Quantity handsOn, List<ClockedStep> days) {

    public Timeline {
        steps = List.copyOf(steps);
        days = List.copyOf(days);
    }

    /**
     * One step on the clock.
     *
     * @param step id
     * @param known whether anybody told how long it takes; if not, its times are nothing
     * @param atLeast whether it takes that long and more, because a part of it has a time that nobody told
     * @param startKnown whether that is known of every step that it waits for; if not, start and end are the least
     * @param start earliest start, low if all before it goes quickly, high if slowly
     * @param end earliest end, in the same way
     * @param takes how long it takes
     * @param handsOn how much of that needs a person
     * @param slack how much later it could begin without moving the end
     * @param critical whether it lies on the longest path
     * @param moments what happens inside it, such as a change of blotters
     */
    public record TimedStep(String step, boolean known, boolean atLeast, boolean startKnown, Quantity start, Quantity end, Quantity takes,
            Quantity handsOn, Quantity slack, boolean critical, List<Moment> moments) {
        public TimedStep {
            moments = List.copyOf(moments);
        }
    }

    /**
     * A moment inside a step.
     *
     * @param kind {@code blotter change}, {@code bath change}, {@code look}
     * @param number from 1
     * @param at time from the start of the step; its high end open where it is overnight
     * @param overnight whether it waits for the next morning
     */
    public record Moment(String kind, int number, Quantity at, boolean overnight) {
    }

    /**
     * One step on the calendar: the earliest and the latest begin and end, within working hours where it needs a person.
     *
     * @param moments the step's moments by the clock, in the same order
     */
    public record ClockedStep(String step, LocalDateTime earliestStart, LocalDateTime latestStart,
            LocalDateTime earliestEnd, LocalDateTime latestEnd, List<ClockedMoment> moments) {
        public ClockedStep {
            moments = List.copyOf(moments);
        }
    }

    /** A moment by the clock; one that would fall when nobody is there waits for the next opening. */
    public record ClockedMoment(String kind, int number, LocalDateTime earliest, LocalDateTime latest) {
    }
}
