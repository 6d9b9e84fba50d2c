package org.benchleaf.derive.time;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The day on which a step was done, beside the days on which the plan has it.
 *
 * @param step id
 * @param on the day on record
 * @param planned counted from the day of the first step, at the studio's hours; empty where that day, or the time of a step
 *     before, is not on record
 */
public record DayOnRecord(String step, LocalDate on, Optional<PlannedDays> planned) {

    /**
     * When a step begins by the plan.
     *
     * @param earliest if all before it goes quickly
     * @param latest if all goes slowly
     */
    public record PlannedDays(LocalDate earliest, LocalDate latest) {
    }

    /** Days by which it was done before (below nought) or after the days of the plan; nought within them, empty without a plan. */
    public Optional<Long> daysLater() {
        return planned.map(days -> on.isBefore(days.earliest()) ? on.toEpochDay() - days.earliest().toEpochDay()
                : Math.max(0, on.toEpochDay() - days.latest().toEpochDay()));
    }
}
