package org.benchleaf.derive.classes;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.derive.classes.Duty.Stretch;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.time.WorkHours;
import org.benchleaf.model.ClassDay;
import org.benchleaf.model.ClassWork;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Part;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * What the technician does for the stations: cuts their pieces, lays each out before the class, and clears the room away after it.
 *
 * @param hours without the days on which the class is closed
 * @param layOut what is laid out
 */
record StationDuties(CourseClass course, Bench bench, WorkHours hours, List<ClassSupplies.LaidOut> layOut) {

    /** All of it, the laying out in time that is free before the class begins, and the cutting before that. */
    List<Duty> around(ClassSchedule schedule, FreeTime free) {
        Quantity each = minutes(ClassWork.LAYING_OUT);
        List<Stretch> stretches = new ArrayList<>();
        for (int station = 0; station < course.stations(); station++) {
            Stretch found = free.latest(course.starts(), StationCut.minutes(each), 0);
            boolean joined = !stretches.isEmpty() && stretches.get(0).from().equals(found.to());
            stretches.add(0, joined ? new Stretch(found.from(), stretches.remove(0).to()) : found);
        }
        LocalDateTime end = course.starts().plusMinutes(schedule.timetable().end());
        Quantity clearing = bench.constant("clearing-the-room").value();
        LocalDateTime cleared = end.plusMinutes((long) StationCut.minutes(clearing) * course.stations());
        List<Duty> duties = new ArrayList<>(waxing(stretches.get(0).from(), free));
        duties.addAll(cutting(stretches.get(0).from(), free));
        duties.add(duty(Duty.Kind.LAYING_OUT, stretches, each, course.stations(), course.starts(), Map.of()));
        duties.addAll(weighing(schedule, free));
        duties.add(duty(Duty.Kind.CLEARING_AWAY, List.of(new Stretch(end, cleared)), clearing, course.stations(), cleared, Map.of()));
        return duties;
    }

    /**
     * A sheet of which the mass tells when it is dry is weighed on the working day before it is taken out, where it lies under its boards
     * for longer than that: by how much its mass changes in a day is then known.
     */
    private List<Duty> weighing(ClassSchedule schedule, FreeTime free) {
        Quantity each = bench.constant("weighing").value();
        List<ScheduleReading.Turn> turns = new ScheduleReading(schedule).turns();
        List<Duty> duties = new ArrayList<>();
        bench.source().steps().stream().filter(step -> step.part(Part.Weighing.class).isPresent()
                && step.part(Part.Press.class).isPresent()).forEach(step -> {
            List<ScheduleReading.Turn> out = turns.stream().filter(turn -> turn.step().equals(step.id()) && turn.isTakenOut())
                    .sorted(Comparator.comparing(ScheduleReading.Turn::from)).toList();
            Optional<LocalDateTime> pressed = turns.stream().filter(turn -> turn.step().equals(step.id()) && turn.isHandsOn()
                    && !turn.isTakenOut() && !turn.isWeighedDried() && !turn.isClearedAway()).map(ScheduleReading.Turn::to)
                    .max(Comparator.naturalOrder());
            if (!out.isEmpty() && pressed.isPresent()) {
                LocalDateTime to = hours.before(out.get(0).from().toLocalDate(), 1).atTime(out.get(0).from().toLocalTime());
                if (to.isAfter(pressed.get())) {
                    Stretch found = free.latest(to, StationCut.minutes(each) * out.size(), 0);
                    duties.add(new Duty(Duty.Kind.SHEETS_WEIGHED, Optional.of(step.id()), ClassDay.Doer.TECHNICIAN,
                            List.of(found), each, out.size(), Quantity.of(0, Unit.MINUTE), to, Map.of()));
                }
            }
        });
        return duties;
    }

    /** The patches of a volatile wax are looked at before the sheets are laid out, and more is laid on where they are thin. */
    private List<Duty> waxing(LocalDateTime until, FreeTime free) {
        Quantity each = bench.constant("laying-wax-again").value();
        int sheets = course.stations() * course.sheetsEach() + course.stores().spare().sheets();
        List<Duty> duties = new ArrayList<>();
        course.papers().making().filter(making -> !making.bought()).ifPresent(making -> bench.source().steps().stream()
                .filter(step -> making.steps().contains(step.id()))
                .forEach(step -> step.part(Part.Fixing.class).filter(StationCut::isVolatileWax).ifPresent(fixing -> duties.add(new Duty(
                        Duty.Kind.WAX_LAID_AGAIN, Optional.of(step.id()), making.by(), List.of(free.latest(until,
                        StationCut.minutes(each) * sheets, 0)), each, sheets, Quantity.of(0, Unit.MINUTE), until,
                        Map.of(fixing.with(), Optional.empty()))))));
        return duties;
    }

    /** Each material of which pieces are cut; sheets that are used as large as they are bought are not. */
    private List<Duty> cutting(LocalDateTime until, FreeTime free) {
        Quantity each = bench.constant("cutting-a-piece").value();
        Map<String, Integer> pieces = new LinkedHashMap<>();
        layOut.stream().filter(item -> item.kind() == ClassSupplies.Kind.MATERIAL && item.all().isPresent()
                && item.size().filter(size -> !bench.material(item.id()).flatMap(Pieces::asBought).equals(Optional.of(size))).isPresent())
                .forEach(item -> pieces.merge(item.id(), (int) Math.ceil(item.all().orElseThrow().high()), Integer::sum));
        List<Duty> duties = new ArrayList<>();
        pieces.forEach((id, count) -> duties.add(duty(Duty.Kind.PIECES_CUT, List.of(free.latest(until,
                StationCut.minutes(each) * count, 0)), each, count, until, Map.of(id, Optional.empty()))));
        return duties;
    }

    private static Duty duty(Duty.Kind kind, List<Stretch> stretches, Quantity each, int count, LocalDateTime needed,
            Map<String, Optional<Quantity>> with) {
        return new Duty(kind, Optional.empty(), ClassDay.Doer.TECHNICIAN, stretches, each, count, Quantity.of(0, Unit.MINUTE), needed,
                with);
    }

    private Quantity minutes(ClassWork kind) {
        return Optional.ofNullable(course.day().work().get(kind)).orElseGet(() -> bench.constant(kind.usual()).value());
    }
}
