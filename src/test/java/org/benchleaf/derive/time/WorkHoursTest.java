package org.benchleaf.derive.time;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WorkHoursTest {

    private static final WorkHours HOURS = new WorkHours(EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
            LocalTime.of(9, 0), LocalTime.of(17, 0));

    /** Counted by hand on a calendar of 2026: five days of eight hours a week; 2 March is a Monday. */
    @ParameterizedTest
    @CsvSource({
        "2026-03-02T09:00, 60, 2026-03-02T10:00",
        "2026-03-02T09:00, 480, 2026-03-02T17:00",
        "2026-03-02T09:00, 481, 2026-03-03T09:01",
        "2026-03-06T16:00, 120, 2026-03-09T10:00",
        "2026-03-02T10:00, 2400, 2026-03-09T10:00",
        "2026-03-02T10:00, 4800, 2026-03-16T10:00",
        "2026-03-04T12:30, 7230, 2026-03-25T13:00",
        "2026-03-07T12:00, 2430, 2026-03-16T09:30",
    })
    void work_goes_on_in_working_hours_only(LocalDateTime begin, double minutes, LocalDateTime end) {
        assertThat(HOURS.workedThrough(begin, minutes)).isEqualTo(end);
    }

    /** 52 weeks of 2,400 minutes for each of 10,000 years. */
    @Test
    void work_of_ten_thousand_years_is_laid_out_at_once() {
        LocalDateTime begin = LocalDateTime.parse("2026-03-02T10:00");
        assertThat(HOURS.workedThrough(begin, 520_000 * 2400.0)).isEqualTo(begin.plusWeeks(520_000));
    }
}
