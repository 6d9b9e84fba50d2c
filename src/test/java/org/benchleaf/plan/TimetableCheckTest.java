package org.benchleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One sound timetable, and one for each thing that a timetable can break; all written by hand. */
class TimetableCheckTest {

    private static List<String> faults(int mist, int lower, int otherMist) {
        List<WorkPart> parts = List.of(new WorkPart("mist", 8), new WorkPart("lower", 4));
        List<Claim> claims = List.of(SmallClass.during(0, 0, 1), SmallClass.during(1, 1, 1), new Claim(2, 1, 0, 1));
        List<TimeLimit> limits = List.of(new TimeLimit(0, 1, 15, true));
        Classroom classroom = new Classroom(List.of(new SharedThing("hood", 1, SharedThing.Kind.THING),
                new SharedThing("supervisor", 1, SharedThing.Kind.STAFF),
                new SharedThing("tray", 2, SharedThing.Kind.THING)),
                List.of(new Station("station 1", 5, parts, claims, limits),
                        new Station("station 2", 0, parts, claims, limits)),
                List.of(new Closure(1, 40, 60)), 100);
        return TimetableCheck.faults(new Timetable(classroom,
                List.of(List.of(mist, lower), List.of(otherMist, otherMist + 8))));
    }

    @ParameterizedTest
    @CsvSource({
        "5, 13, 70, ''",
        "4, 13, 70, begins before it may",
        "5, 12, 70, begins before it may",
        "5, 29, 70, begins later than its limit allows",
        "5, 13, 10, hood: 2 taken at minute 10 of 1",
        "20, 38, 70, 'supervisor: 1 taken at minute 40, when it is not there'",
        "5, 13, 90, ends after the horizon",
    })
    void what_a_timetable_breaks_is_told(int mist, int lower, int otherMist, String told) {
        if (told.isEmpty()) {
            assertThat(faults(mist, lower, otherMist)).isEmpty();
        } else {
            assertThat(faults(mist, lower, otherMist)).anyMatch(fault -> fault.endsWith(told));
        }
    }
}
