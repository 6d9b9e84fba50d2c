package org.benchleaf.derive.time;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.derive.Invented;
import org.junit.jupiter.api.Test;

/** The days of the record beside those of the plan, laid out by hand on working days from 9 to 17 o'clock, Monday to Friday. */
class DaysOnRecordTest {

    private static LocalDate march(int day) {
        return LocalDate.of(2026, 3, day);
    }

    private static DayOnRecord day(String step, int on, int earliest, int latest) {
        return new DayOnRecord(step, march(on), Optional.of(new DayOnRecord.PlannedDays(march(earliest), march(latest))));
    }

    /** 2 March 2026 is a Monday. */
    private static Invented week() {
        return new Invented().step("look", Map.of("takes", "4 h to 6 h", "on", "2026-03-02"), List.of())
                .step("clean", Map.of("takes", "3 h", "on", "2026-03-04"), List.of("look"))
                .step("long", Map.of("takes", "7 h", "on", "2026-03-02"), List.of("look"))
                .step("rested", Map.of("takes", "1 h", "wait", "2 d", "on", "2026-03-05"), List.of("clean"))
                .step("undated", Map.of("takes", "1 h"), List.of("rested"));
    }

    @Test
    void each_day_stands_beside_both_ends_of_the_plan() {
        List<DayOnRecord> days = week().derived().worked().daysOnRecord();
        // Quick: looked at by 13, cleaned by 16, two days later on Wednesday at 16. Slow: by 15, so that cleaning has no room on
        // Monday, ends on Tuesday at 12 and rests until Thursday at 12. Seven hours never fit behind the look on Monday.
        assertThat(days).containsExactly(day("look", 2, 2, 2), day("clean", 4, 2, 3), day("long", 2, 3, 3), day("rested", 5, 4, 5));
        assertThat(days).extracting(one -> one.daysLater().orElseThrow()).containsExactly(0L, 1L, -1L, 0L);
    }

    @Test
    void nothing_is_compared_behind_a_wait_of_unknown_length_or_without_a_first_day() {
        List<DayOnRecord> behind = week()
                .step("gone", Map.of("takes", "1 h", "sign", "the wax is gone", "on", "2026-03-31"), List.of("rested"))
                .step("last", Map.of("takes", "1 h", "on", "2026-03-31"), List.of("gone")).derived().worked().daysOnRecord();
        assertThat(behind).filteredOn(one -> one.planned().isEmpty()).extracting(DayOnRecord::step).containsExactly("gone", "last");
        List<DayOnRecord> without = new Invented().step("look", Map.of("takes", "1 h"), List.of())
                .step("clean", Map.of("takes", "1 h", "on", "2026-03-04"), List.of("look")).derived().worked().daysOnRecord();
        assertThat(without).containsExactly(new DayOnRecord("clean", march(4), Optional.empty()));
        assertThat(without.get(0).daysLater()).isEmpty();
    }
}
