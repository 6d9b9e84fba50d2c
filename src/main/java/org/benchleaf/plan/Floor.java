package org.benchleaf.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;

/**
 * A minute before which no plan of a class can end.
 *
 * <p>For each thing: what must come before its work begins, the work itself shared among all there are, and what must
 * come after; and the longest that one station takes when nobody is in its way.
 *
 * @param minutes the floor
 * @param thing whose work decides, as its place in the list of things; empty if one station's own parts do
 * @param before minutes that must come before the deciding work; all of them if one station decides
 * @param work minutes of work of the thing, over all of them
 * @param after minutes that must come after it
 */
public record Floor(int minutes, OptionalInt thing, int before, int work, int after) {

    /**
     * The floor of a class.
     *
     * @throws IllegalArgumentException if a station cannot be done even alone
     */
    public static Floor of(Classroom classroom) {
        List<Work> works = new ArrayList<>();
        Floor highest = alone(classroom, works);
        for (int thing = 0; thing < classroom.things().size(); thing++) {
            highest = of(classroom, thing, works, highest);
        }
        return highest;
    }

    /** Work of one claim: amount times minutes, and what must come before and after it. */
    private record Work(int thing, int before, int minutes, int after) {
    }

    private static Floor alone(Classroom classroom, List<Work> works) {
        int longest = 0;
        for (Station station : classroom.stations()) {
            Classroom alone = new Classroom(classroom.things(), List.of(station), classroom.closures(),
                    classroom.horizon());
            Arrangement arrangement = new Arrangement(alone);
            if (!arrangement.insert(0, 0, 0)) {
                throw new IllegalArgumentException(station.name() + " cannot be done even alone");
            }
            int[] starts = arrangement.starts(0);
            longest = Math.max(longest, arrangement.end(0));
            int last = station.parts().size() - 1;
            for (Claim claim : station.claims()) {
                works.add(new Work(claim.thing(), starts[claim.first()],
                        claim.amount() * station.minutes(claim.first(), claim.last()),
                        station.minutes(claim.last() + 1, last)));
            }
        }
        return new Floor(longest, OptionalInt.empty(), longest, 0, 0);
    }

    private static Floor of(Classroom classroom, int thing, List<Work> works, Floor soFar) {
        List<Work> own = works.stream().filter(work -> work.thing == thing)
                .sorted(Comparator.comparingInt(Work::after).reversed()).toList();
        int[] there = there(classroom, thing);
        Floor highest = soFar;
        for (int before : own.stream().mapToInt(Work::before).distinct().toArray()) {
            int sum = 0;
            for (Work work : own) {
                if (work.before >= before) {
                    sum += work.minutes;
                    int end = done(there, before, sum) + work.after;
                    highest = end > highest.minutes
                            ? new Floor(end, OptionalInt.of(thing), before, sum, work.after) : highest;
                }
            }
        }
        return highest;
    }

    /** How many minutes of a thing there have been before each minute, over all of them. */
    private static int[] there(Classroom classroom, int thing) {
        boolean[] closed = new boolean[classroom.horizon()];
        for (Closure closure : classroom.closures()) {
            for (int minute = Math.max(0, closure.from()); closure.thing() == thing
                    && minute < Math.min(closure.to(), closed.length); minute++) {
                closed[minute] = true;
            }
        }
        int[] there = new int[closed.length + 1];
        for (int minute = 0; minute < closed.length; minute++) {
            there[minute + 1] = there[minute] + (closed[minute] ? 0 : classroom.things().get(thing).count());
        }
        return there;
    }

    /** The minute at which so much work can be done that begins at a minute; one beyond the horizon if not within it. */
    private static int done(int[] there, int from, int work) {
        int low = from;
        int high = there.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (there[middle] - there[from] >= work) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}
