package org.benchleaf.plan;

import java.util.ArrayList;
import java.util.List;

/** Something for which a class cannot be planned at all, found by counting and not by trying. */
public sealed interface Obstacle {

    /** A limit that the parts between its ends do not leave room for. */
    record Contradiction(Station station, TimeLimit limit, int between) implements Obstacle {
    }

    /** A part that takes more of a thing than there is. */
    record TooMuch(Station station, int part, SharedThing thing, int amount) implements Obstacle {
    }

    /** A part for which there is no room before the horizon even if the station is alone. */
    record NoRoom(Station station, int part) implements Obstacle {
    }

    /** Everything that stands in the way of planning a class; empty if it can be planned. */
    static List<Obstacle> of(Classroom classroom) {
        List<Obstacle> found = new ArrayList<>();
        for (Station station : classroom.stations()) {
            contradictions(station, found);
            tooMuch(classroom, station, found);
        }
        if (found.isEmpty()) {
            classroom.stations().forEach(station -> noRoom(classroom, station, found));
        }
        return found;
    }

    private static void contradictions(Station station, List<Obstacle> found) {
        for (TimeLimit limit : station.limits()) {
            int between = station.minutes(limit.from() + 1, limit.to() - 1);
            if (between > limit.minutes()) {
                found.add(new Contradiction(station, limit, between));
            }
        }
    }

    private static void tooMuch(Classroom classroom, Station station, List<Obstacle> found) {
        for (Claim claim : station.claims()) {
            SharedThing thing = classroom.things().get(claim.thing());
            if (claim.amount() > thing.count()) {
                found.add(new TooMuch(station, claim.first(), thing, claim.amount()));
            }
        }
    }

    private static void noRoom(Classroom classroom, Station station, List<Obstacle> found) {
        Classroom alone = new Classroom(classroom.things(), List.of(station), classroom.closures(), classroom.horizon());
        int part = new Arrangement(alone).firstWithoutRoom(0);
        if (part < station.parts().size()) {
            found.add(new NoRoom(station, part));
        }
    }
}
