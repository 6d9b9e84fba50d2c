package org.benchleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Timetables and their waits are written by hand. */
class DelayTest {

    private static final SharedThing PLATE = new SharedThing("hot plate", 1, SharedThing.Kind.THING);
    private static final SharedThing SUPERVISOR = new SharedThing("supervisor", 1, SharedThing.Kind.STAFF);

    private static Station station(String name, List<TimeLimit> limits) {
        return new Station(name, 0, List.of(new WorkPart("clean", 10), new WorkPart("wax", 8), new WorkPart("hold", 2)),
                List.of(SmallClass.during(1, 0, 1), SmallClass.during(2, 1, 1)), limits);
    }

    private static Timetable timetable(List<TimeLimit> limits, List<Closure> closures, List<List<Integer>> starts) {
        Timetable timetable = new Timetable(new Classroom(List.of(PLATE, SUPERVISOR),
                List.of(station("station 1", limits), station("station 2", limits)), closures, 100), starts);
        assertThat(TimetableCheck.faults(timetable)).isEmpty();
        return timetable;
    }

    @Test
    void who_has_the_thing_is_named() {
        assertThat(Delay.of(timetable(List.of(), List.of(), List.of(List.of(0, 10, 18), List.of(0, 18, 26)))))
                .containsExactly(new Delay(1, 1, 8, new Delay.Taken(0, List.of(new Delay.Holder(0, 1)), 18)));
    }

    @Test
    void hours_in_which_nobody_is_there_are_named() {
        assertThat(Delay.of(timetable(List.of(), List.of(new Closure(1, 15, 30)),
                List.of(List.of(0, 10, 30), List.of(0, 18, 32)))))
                .contains(new Delay(0, 2, 12, new Delay.Away(1, 30)));
    }

    /** The wax may end no more than 3 min before the hold, which must wait for the supervisor. */
    @Test
    void a_limit_leads_to_the_later_part_that_waits() {
        assertThat(Delay.of(timetable(List.of(new TimeLimit(1, 2, 3, true)), List.of(new Closure(1, 0, 30)),
                List.of(List.of(0, 19, 30), List.of(0, 27, 35)))))
                .contains(new Delay(0, 1, 9, new Delay.HeldBack(2, new Delay.Away(1, 30))));
    }

    @Test
    void a_part_with_nothing_in_its_way_is_in_no_hurry() {
        assertThat(Delay.of(timetable(List.of(), List.of(), List.of(List.of(5, 15, 23), List.of(30, 40, 48)))))
                .containsExactly(new Delay(0, 0, 5, new Delay.NoHurry()), new Delay(1, 0, 30, new Delay.NoHurry()));
    }
}
