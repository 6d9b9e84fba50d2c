package org.benchleaf.derive.classes;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.benchleaf.derive.time.WorkHours;
import org.benchleaf.model.ClassDay;
import org.benchleaf.model.CourseClass;
import org.benchleaf.plan.Claim;
import org.benchleaf.plan.Classroom;
import org.benchleaf.plan.Closure;
import org.benchleaf.plan.SharedThing;
import org.benchleaf.plan.Station;
import org.benchleaf.plan.WorkPart;

/** Lays out a class for the planner: things, stations, and the minutes at which nobody is there. */
final class ClassroomMaker {

    /** Minutes of a day. */
    static final int DAY = 24 * 60;
    /** Days beyond the work itself in which a plan must fit: two weekends and a week. */
    private static final int SPARE_DAYS = 11;

    private final CourseClass course;
    private final StationCut cut;
    private final WorkHours hours;
    private final int calibrating;
    private final int briefing;
    private final List<SharedThing> things = new ArrayList<>();

    /**
     * Makes ready to lay out a class.
     *
     * @param calibrating minutes for which nobody has the meter when a day begins, for it is calibrated then
     * @param briefing minutes for which the briefing is read, before anybody begins
     */
    ClassroomMaker(CourseClass course, StationCut cut, WorkHours hours, int calibrating, int briefing) {
        this.course = course;
        this.cut = cut;
        this.hours = hours;
        this.calibrating = calibrating;
        this.briefing = briefing;
        course.day().shared().forEach((name, count) -> things.add(new SharedThing(name, count,
                cut.turns().contains(name) ? SharedThing.Kind.TURN : SharedThing.Kind.THING)));
        cut.turns().stream().filter(turn -> !course.day().shared().containsKey(turn)).forEach(turn ->
                things.add(new SharedThing(turn, 1, SharedThing.Kind.TURN)));
        course.day().supervisors().ifPresent(count ->
                things.add(new SharedThing(StationCut.SUPERVISOR, count, SharedThing.Kind.STAFF)));
        for (int station = 1; station <= course.stations(); station++) {
            things.add(new SharedThing(StationCut.HANDS + " of station " + station, course.day().traineesEach(),
                    SharedThing.Kind.TRAINEE));
        }
    }

    Classroom classroom() {
        List<Station> stations = new ArrayList<>();
        for (int number = 0; number < course.stations(); number++) {
            stations.add(station(number));
        }
        int alone = cut.parts().stream().mapToInt(WorkPart::minutes).sum();
        int horizon = (2 * alone / DAY + SPARE_DAYS) * DAY;
        return new Classroom(things, stations, closures(horizon), horizon);
    }

    private Station station(int number) {
        List<Claim> claims = new ArrayList<>();
        for (StationCut.Taking taking : cut.takings()) {
            boolean second = taking.thing().equals(StationCut.SECOND_HANDS);
            if (second && course.day().traineesEach() > 1) {
                // Both pairs of hands are the station's own.
                claims.remove(claim(StationCut.HANDS, number, 1, taking));
                claims.add(claim(StationCut.HANDS, number, 2, taking));
            } else if (!second || !isBeside(helper(number), taking)) {
                claims.add(claim(second ? helper(number) : taking.thing(), number, taking.amount(), taking));
            }
        }
        return new Station("station " + (number + 1), earliest(number), cut.parts(), claims, cut.limits());
    }

    /** Neighbours help one another in pairs; one without a neighbour is helped by the supervisor. */
    private String helper(int number) {
        int neighbour = number % 2 == 0 ? number + 1 : number - 1;
        return neighbour < course.stations() ? StationCut.HANDS + " of station " + (neighbour + 1)
                : StationCut.SUPERVISOR;
    }

    /** Who stands beside the work anyway lends a hand too. */
    private boolean isBeside(String helper, StationCut.Taking taking) {
        return cut.takings().stream().anyMatch(each -> each.thing().equals(helper) && each.first() == taking.first());
    }

    private Claim claim(String name, int number, int amount, StationCut.Taking taking) {
        String full = name.equals(StationCut.HANDS) ? StationCut.HANDS + " of station " + (number + 1) : name;
        int thing = things.stream().map(SharedThing::name).toList().indexOf(full);
        return new Claim(thing, amount, taking.first(), taking.last());
    }

    private int earliest(int number) {
        return briefed(number) + briefing;
    }

    /** When those at a station read the briefing: with their group. */
    private int briefed(int number) {
        return course.day().rhythm() == ClassDay.Rhythm.GROUPS ? course.day().groups()
                .map(groups -> number / groups.of() * StationCut.minutes(groups.every())).orElse(0) : 0;
    }

    /** Nights, days off and breaks, for everybody; the meter is calibrated when a day begins. */
    private List<Closure> closures(int horizon) {
        List<Closure> closures = new ArrayList<>();
        LocalDate day = course.starts().toLocalDate();
        LocalDateTime end = course.starts().plusMinutes(horizon);
        IntStream.range(0, course.stations()).map(this::briefed).distinct().filter(from -> from > 0).forEach(from ->
                closed(closures, course.starts().plusMinutes(from), course.starts().plusMinutes(from + briefing), StationCut.SUPERVISOR));
        for (LocalDate date = day; date.atStartOfDay().isBefore(end); date = date.plusDays(1)) {
            if (hours.isWorked(date)) {
                closed(closures, date.atStartOfDay(), date.atTime(hours.opens()));
                calibrated(closures, date.atTime(hours.opens()));
                closed(closures, date.atTime(hours.closes()), date.plusDays(1).atStartOfDay());
                for (ClassDay.Break each : course.day().breaks()) {
                    closed(closures, date.atTime(each.from()), date.atTime(each.to()));
                }
            } else {
                closed(closures, date.atStartOfDay(), date.plusDays(1).atStartOfDay());
            }
        }
        return closures;
    }

    private void calibrated(List<Closure> closures, LocalDateTime opens) {
        LocalDateTime last = opens.plusMinutes(calibrating);
        if (minute(last) > 0) {
            closed(closures, opens, last, StationCut.METER);
        }
    }

    private void closed(List<Closure> closures, LocalDateTime from, LocalDateTime to, String only) {
        for (int thing = 0; thing < things.size(); thing++) {
            if (things.get(thing).name().equals(only)) {
                closures.add(new Closure(thing, minute(from), minute(to)));
            }
        }
    }

    private void closed(List<Closure> closures, LocalDateTime from, LocalDateTime to) {
        int first = minute(from);
        int last = minute(to);
        for (int thing = 0; thing < things.size() && last > Math.max(0, first); thing++) {
            if (things.get(thing).kind().isPerson()) {
                closures.add(new Closure(thing, first, last));
            }
        }
    }

    private int minute(LocalDateTime time) {
        return (int) Duration.between(course.starts(), time).toMinutes();
    }
}
