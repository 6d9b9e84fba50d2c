package org.benchleaf.derive.classes;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.derive.classes.Duty.Stretch;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.model.ClassDay;
import org.benchleaf.model.ClassWork;
import org.benchleaf.model.CourseClass;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** What the technician does for the stations: lays each out before the class, and clears the room away after it. */
record StationDuties(CourseClass course, Bench bench) {

    /** Both, the laying out in time that is free before the class begins. */
    List<Duty> around(ClassSchedule schedule, FreeTime free) {
        Quantity each = minutes(ClassWork.LAYING_OUT);
        List<Stretch> stretches = new ArrayList<>();
        for (int station = 0; station < course.stations(); station++) {
            Stretch found = free.latest(course.starts(), StationCut.minutes(each), 0);
            boolean joined = !stretches.isEmpty() && stretches.get(0).from().equals(found.to());
            stretches.add(0, joined ? new Stretch(found.from(), stretches.remove(0).to()) : found);
        }
        LocalDateTime end = course.starts().plusMinutes(schedule.timetable().end());
        Quantity clearing = minutes(ClassWork.CLEARING_AWAY);
        LocalDateTime cleared = end.plusMinutes(StationCut.minutes(clearing));
        return List.of(duty(Duty.Kind.LAYING_OUT, stretches, each, course.stations(), course.starts()),
                duty(Duty.Kind.CLEARING_AWAY, List.of(new Stretch(end, cleared)), clearing, 1, cleared));
    }

    private static Duty duty(Duty.Kind kind, List<Stretch> stretches, Quantity each, int count, LocalDateTime needed) {
        return new Duty(kind, Optional.empty(), ClassDay.Doer.TECHNICIAN, stretches, each, count, Quantity.of(0, Unit.MINUTE), needed,
                Map.of());
    }

    private Quantity minutes(ClassWork kind) {
        return Optional.ofNullable(course.day().work().get(kind)).orElseGet(() -> bench.constant(kind.usual()).value());
    }
}
