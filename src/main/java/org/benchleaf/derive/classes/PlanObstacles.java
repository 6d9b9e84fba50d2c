package org.benchleaf.derive.classes;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.message.PlanMessages;
import org.benchleaf.model.ClassDay;
import org.benchleaf.model.CourseClass;
import org.benchleaf.plan.Classroom;
import org.benchleaf.plan.Floor;
import org.benchleaf.plan.Obstacle;
import org.benchleaf.plan.Releases;
import org.benchleaf.plan.Station;
import org.benchleaf.plan.TimeLimit;

/** Tells by name what cannot be done in a class, and what would help; every number comes from a count, not a search. */
final class PlanObstacles {

    private static final int HOUR = 60;

    private final CourseClass course;
    private final StationCut cut;
    private final Messages messages;

    PlanObstacles(CourseClass course, StationCut cut, Messages messages) {
        this.course = course;
        this.cut = cut;
        this.messages = messages;
    }

    /** Contradictions, wants that cannot be met, and releases that take too long. */
    void tell(Classroom classroom) {
        // Alike stations have alike obstacles, which are told once.
        Set<Message> told = new LinkedHashSet<>();
        Obstacle.of(classroom).forEach(obstacle -> told.add(message(obstacle)));
        told.forEach(messages::add);
        if (told.isEmpty()) {
            supervised();
            // Sheets at which a supervisor stood one after another do not come to a release together.
            classroom.stations().get(0).limits().stream().filter(limit -> cut.supervised().stream()
                    .noneMatch(part -> limit.from() <= part && part < limit.to())).forEach(limit -> releases(classroom, limit));
        }
    }

    /** Stations that begin together cannot all have a supervisor beside them. */
    private void supervised() {
        int size = together();
        course.day().supervisors().filter(count -> count < size).ifPresent(count -> cut.supervised().stream().findFirst().ifPresent(part ->
                messages.add(PlanMessages.TOO_MANY_TO_STAND_BESIDE.at(course.place(), "supervisors", supervisors(count), "stations", size,
                        "part", cut.parts().get(part).name(), "minutes", time(cut.parts().get(part).minutes()),
                        "all", time((size + count - 1) / count * cut.parts().get(part).minutes()), "more", size - count))));
    }

    /** How many stations begin together; 0 where each begins when it fits. */
    private int together() {
        return switch (course.day().rhythm()) {
            case TOGETHER -> course.stations();
            case GROUPS -> Math.min(course.stations(), course.day().groups().map(ClassDay.Groups::of).orElse(course.stations()));
            case SHORTEST, SAME_CARD -> 0;
        };
    }

    private Message message(Obstacle obstacle) {
        if (obstacle instanceof Obstacle.Contradiction found) {
            return PlanMessages.LIMIT_TOO_SHORT.at(course.place(), "from", part(found.station(), found.limit().from()),
                    "to", part(found.station(), found.limit().to()), "limit", time(found.limit().minutes()),
                    "between", time(found.between()));
        }
        if (obstacle instanceof Obstacle.TooMuch found) {
            return PlanMessages.MORE_THAN_THERE_IS.at(course.place(), "part", part(found.station(), found.part()),
                    "amount", found.amount(), "thing", found.thing().name(), "count", found.thing().count());
        }
        Obstacle.NoRoom found = (Obstacle.NoRoom) obstacle;
        return PlanMessages.NEVER_ROOM.at(course.place(), "part", part(found.station(), found.part()),
                "minutes", time(found.station().parts().get(found.part()).minutes()));
    }

    private static String part(Station station, int part) {
        return station.parts().get(part).name();
    }

    /** Stations that begin together come to the supervisor together. */
    private void releases(Classroom classroom, TimeLimit limit) {
        Optional<Integer> supervisors = course.day().supervisors();
        int each = released(classroom, limit);
        int size = together();
        if (each == 0 || supervisors.isEmpty() || size == 0) {
            return;
        }
        Releases releases = new Releases(supervisors.get(), limit.minutes(), each);
        int count = (course.stations() + size - 1) / size;
        int apart = course.day().groups().filter(any -> course.day().rhythm() == ClassDay.Rhythm.GROUPS)
                .map(any -> StationCut.minutes(any.every())).orElse(0);
        if (size > releases.atOnce() || apart < releases.apart(size, count)) {
            String from = part(classroom.stations().get(0), limit.from());
            messages.add(PlanMessages.RELEASE_TOO_SLOW.at(course.place(), "supervisors", supervisors(supervisors.get()),
                    "stations", course.stations(), "limit", time(limit.minutes()), "from", from,
                    "most", releases.atOnce(), "each", time(each), "remedy", remedy(releases)));
        }
    }

    /** Minutes of the supervisor that lie inside a limit. */
    private static int released(Classroom classroom, TimeLimit limit) {
        Station station = classroom.stations().get(0);
        return station.claims().stream().filter(claim -> limit.from() < claim.first() && claim.first() < limit.to())
                .filter(claim -> classroom.things().get(claim.thing()).name().equals(StationCut.SUPERVISOR))
                .mapToInt(claim -> station.parts().get(claim.first()).minutes()).sum();
    }

    private String remedy(Releases releases) {
        int more = new Releases(releases.supervisors() + 1, releases.within(), releases.each()).atOnce();
        String another = "or ask for another supervisor (" + more + " at once).";
        int most = releases.atOnce();
        if (most == 0) {
            return "Allow " + time(releases.each()) + " at least, " + another;
        }
        int groups = (course.stations() + most - 1) / most;
        return "Begin in groups of " + most + ", " + time(releases.apart(most, groups)) + " after one another, " + another;
    }

    /** Says what alone takes longer than there is time, and what would do. */
    void dayTooShort(Classroom classroom, Floor floor, LocalDateTime by) {
        long allowed = Duration.between(course.starts(), by).toMinutes();
        int fit = IntStream.range(1, course.stations())
                .filter(count -> Floor.of(classroom.withFirst(count)).minutes() <= allowed).max().orElse(0);
        String fewer = fit == 0 ? "Not even one station would be done; allow more time or take fewer steps."
                : (fit == 1 ? "One station fits" : fit + " stations fit") + " into " + time((int) allowed) + ".";
        String more = floor.thing().isPresent() && classroom.things().get(floor.thing().getAsInt()).kind().canBeLent()
                ? " " + withOneMore(classroom, floor) : "";
        messages.add(PlanMessages.DAY_TOO_SHORT.at(course.place(), "by", by.toString().replace('T', ' '),
                "cause", cause(classroom, floor), "remedy", fewer + more));
    }

    private static String cause(Classroom classroom, Floor floor) {
        if (floor.thing().isEmpty()) {
            return "the steps of one station alone need " + time(floor.minutes());
        }
        return "the " + classroom.things().get(floor.thing().getAsInt()).name() + " alone needs "
                + time(floor.minutes()) + " (" + time(floor.before()) + " before it, " + time(floor.work())
                + " of work for it, " + time(floor.after()) + " after it)";
    }

    private static String withOneMore(Classroom classroom, Floor floor) {
        int thing = floor.thing().orElseThrow();
        Classroom more = classroom.withOneMore(thing);
        Floor next = Floor.of(more);
        return "With one more " + classroom.things().get(thing).name() + ", " + cause(more, next) + ".";
    }

    static String supervisors(int count) {
        return count == 1 ? "one supervisor" : count + " supervisors";
    }

    /** Minutes as one says them: 45 min, 7 h 15 min. */
    static String time(int minutes) {
        if (minutes < 2 * HOUR) {
            return minutes + " min";
        }
        return minutes / HOUR + " h" + (minutes % HOUR == 0 ? "" : " " + minutes % HOUR + " min");
    }
}
