package org.benchleaf.plan;

/**
 * Puts one station among the others, which stay.
 *
 * <p>All that binds a station (order, limits, what is free at which minute) is closed under taking the smaller of two
 * solutions part by part, so there is one least solution. Raising starts until nothing is in the way finds it; and in
 * the same way lowering them finds the greatest.
 */
final class Insertion {

    private final Room room;
    private final int horizon;

    Insertion(Room room, int horizon) {
        this.room = room;
        this.horizon = horizon;
    }

    /**
     * Raises starts to the least solution at or above them.
     *
     * @param starts lower bounds, which become the solution
     * @return whether there is one before the horizon; the starts are of no use if not
     */
    boolean raise(StationWork work, int[] starts) {
        return firstWithoutRoom(work, starts) == work.parts();
    }

    /** As {@link #raise}; the first part for which there is no room, or the number of parts if there is for all. */
    int firstWithoutRoom(StationWork work, int[] starts) {
        int part = 0;
        while (part < work.parts()) {
            int from = part == 0 ? work.station.earliest() : starts[part - 1] + work.minutes[part - 1];
            int start = firstFree(work, part, Math.max(starts[part], from));
            if (start == Room.NONE) {
                return part;
            }
            starts[part] = start;
            part = raisedEarlier(work, starts, part);
        }
        return part;
    }

    private int firstFree(StationWork work, int part, int from) {
        int start = from;
        boolean moved = true;
        while (moved) {
            if (start + work.minutes[part] > horizon) {
                return Room.NONE;
            }
            moved = false;
            for (Claim claim : work.during[part]) {
                int blocked = room.lastBlocked(claim.thing(), claim.amount(), start, start + work.minutes[part]);
                if (blocked != Room.NONE) {
                    start = blocked + 1;
                    moved = true;
                    break;
                }
            }
        }
        return start;
    }

    /** Raises an earlier part that a limit or a claim draws after this one; the part from which to go on. */
    private int raisedEarlier(StationWork work, int[] starts, int part) {
        int next = part + 1;
        for (TimeLimit limit : work.before[part]) {
            int least = starts[part] - limit.minutes() - work.minutes[limit.from()];
            if (least > starts[limit.from()]) {
                starts[limit.from()] = least;
                next = Math.min(next, limit.from());
            }
        }
        for (Claim claim : work.until[part]) {
            int blocked = room.lastBlocked(claim.thing(), claim.amount(), starts[claim.first()],
                    starts[part] + work.minutes[part]);
            if (blocked != Room.NONE) {
                starts[claim.first()] = blocked + 1;
                next = Math.min(next, claim.first());
            }
        }
        return next;
    }

    /**
     * Moves the parts of a limit, all but its last, as late as that one's start allows.
     *
     * @param starts a solution, which becomes another one
     */
    void delay(StationWork work, int[] starts, TimeLimit limit) {
        for (int part = limit.from(); part < limit.to(); part++) {
            starts[part] = starts[limit.to()];
        }
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int part = limit.to() - 1; part >= limit.from(); part--) {
                int start = latest(work, starts, part);
                moved |= start < starts[part];
                starts[part] = start;
            }
        }
    }

    private int latest(StationWork work, int[] starts, int part) {
        int start = Math.min(starts[part], starts[part + 1] - work.minutes[part]);
        for (TimeLimit limit : work.before[part]) {
            start = Math.min(start, starts[limit.from()] + work.minutes[limit.from()] + limit.minutes());
        }
        for (Claim claim : work.until[part]) {
            int blocked = room.firstBlocked(claim.thing(), claim.amount(), starts[claim.first()],
                    start + work.minutes[part]);
            start = blocked == Room.NONE ? start : Math.min(start, blocked - work.minutes[part]);
        }
        return lastFree(work, part, start);
    }

    private int lastFree(StationWork work, int part, int from) {
        int start = from;
        boolean moved = true;
        while (moved) {
            moved = false;
            for (Claim claim : work.during[part]) {
                int blocked = room.firstBlocked(claim.thing(), claim.amount(), start, start + work.minutes[part]);
                if (blocked != Room.NONE) {
                    start = blocked - work.minutes[part];
                    moved = true;
                    break;
                }
            }
        }
        return start;
    }
}
