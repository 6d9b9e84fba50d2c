package org.benchleaf.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * A class as the planner sees it.
 *
 * @param things what there are only so many of, people included
 * @param stations who works
 * @param closures when people are not there; waiting runs on
 * @param horizon the minute by which everything must be over
 */
public record Classroom(List<SharedThing> things, List<Station> stations, List<Closure> closures, int horizon) {

    public Classroom {
        things = List.copyOf(things);
        stations = List.copyOf(stations);
        closures = List.copyOf(closures);
        if (stations.isEmpty() || horizon < 1) {
            throw new IllegalArgumentException(stations.size() + " stations, " + horizon + " minutes");
        }
        int count = things.size();
        if (closures.stream().anyMatch(closure -> closure.thing() >= count) || stations.stream()
                .flatMap(station -> station.claims().stream()).anyMatch(claim -> claim.thing() >= count)) {
            throw new IllegalArgumentException("a thing that is not in the list is claimed or closed");
        }
    }

    /** The same with one more of a thing. */
    public Classroom withOneMore(int thing) {
        List<SharedThing> more = new ArrayList<>(things);
        more.set(thing, things.get(thing).withOneMore());
        return new Classroom(more, stations, closures, horizon);
    }

    /** The same with the first stations only. */
    public Classroom withFirst(int count) {
        return new Classroom(things, stations.subList(0, count), closures, horizon);
    }
}
