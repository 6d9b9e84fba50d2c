package org.benchleaf.plan;

import java.util.Arrays;

/** How many of each thing are free at each minute. Things that can never run short are not kept. */
final class Room {

    /** No minute is in the way. */
    static final int NONE = -1;

    private final int[][] free;

    /** The room with nobody in it yet. */
    Room(Classroom classroom) {
        free = new int[classroom.things().size()][];
        for (int thing = 0; thing < free.length; thing++) {
            if (mayRunShort(classroom, thing)) {
                free[thing] = new int[classroom.horizon()];
                Arrays.fill(free[thing], classroom.things().get(thing).count());
            }
        }
        for (Closure closure : classroom.closures()) {
            int from = within(closure.from(), classroom.horizon());
            Arrays.fill(free[closure.thing()], from, Math.max(from, within(closure.to(), classroom.horizon())), 0);
        }
    }

    private static int within(int minute, int horizon) {
        return Math.min(Math.max(0, minute), horizon);
    }

    private static boolean mayRunShort(Classroom classroom, int thing) {
        int most = 0;
        for (Station station : classroom.stations()) {
            most += station.claims().stream().filter(claim -> claim.thing() == thing).mapToInt(Claim::amount).max()
                    .orElse(0);
        }
        return most > classroom.things().get(thing).count()
                || classroom.closures().stream().anyMatch(closure -> closure.thing() == thing);
    }

    boolean keeps(int thing) {
        return free[thing] != null;
    }

    /** Takes an amount from one minute to before another. */
    void take(int thing, int amount, int from, int to) {
        int[] line = free[thing];
        for (int minute = from; minute < to; minute++) {
            line[minute] -= amount;
        }
    }

    int freeAt(int thing, int minute) {
        return free[thing][minute];
    }

    /** The last minute of a stretch in which less than an amount is free. */
    int lastBlocked(int thing, int amount, int from, int to) {
        int[] line = free[thing];
        for (int minute = to - 1; minute >= from; minute--) {
            if (line[minute] < amount) {
                return minute;
            }
        }
        return NONE;
    }

    /** The first minute of a stretch in which less than an amount is free. */
    int firstBlocked(int thing, int amount, int from, int to) {
        int[] line = free[thing];
        for (int minute = from; minute < to; minute++) {
            if (line[minute] < amount) {
                return minute;
            }
        }
        return NONE;
    }
}
