package org.benchleaf.plan;

import java.util.Arrays;

/** All stations in one room; any of them can be taken out and put in again. */
final class Arrangement {

    private final Room room;
    private final Insertion insertion;
    private final StationWork[] works;
    private final int[][] starts;

    /** The empty room: no station is in it yet. */
    Arrangement(Classroom classroom) {
        room = new Room(classroom);
        insertion = new Insertion(room, classroom.horizon());
        works = classroom.stations().stream().map(station -> new StationWork(station, room)).toArray(StationWork[]::new);
        starts = Arrays.stream(works).map(work -> new int[work.parts()]).toArray(int[][]::new);
    }

    int stations() {
        return works.length;
    }

    int parts(int station) {
        return works[station].parts();
    }

    /** The starts of a station that is in. */
    int[] starts(int station) {
        return starts[station].clone();
    }

    int end(int station) {
        return works[station].end(starts[station]);
    }

    int end() {
        int end = 0;
        for (int station = 0; station < works.length; station++) {
            end = Math.max(end, end(station));
        }
        return end;
    }

    int wetWaiting(int station) {
        return works[station].wetWaiting(starts[station]);
    }

    /** Takes a station out. */
    void remove(int station) {
        works[station].giveBack(room, starts[station]);
    }

    /** Puts a station in with given starts, for which there is room. */
    void put(int station, int[] given) {
        starts[station] = given.clone();
        works[station].take(room, given);
    }

    /**
     * Puts a station in as early as the others let it.
     *
     * @param part a part that begins no earlier than {@code minute}
     * @return whether there is room; the station stays out if not
     */
    boolean insert(int station, int part, int minute) {
        int[] given = new int[works[station].parts()];
        given[part] = minute;
        boolean fits = insertion.raise(works[station], given);
        if (fits) {
            put(station, given);
        }
        return fits;
    }

    /** As {@link #insert}, with nothing held back; the first part for which there is no room, or the number of parts. */
    int firstWithoutRoom(int station) {
        return insertion.firstWithoutRoom(works[station], new int[works[station].parts()]);
    }

    /** Moves every station as early as the others let it, until none can move. */
    void compact() {
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int station = 0; station < works.length; station++) {
                int[] old = starts[station];
                remove(station);
                // Where it stood there is room, so that it always fits and never ends later.
                insert(station, 0, 0);
                moved |= !Arrays.equals(old, starts[station]);
            }
        }
    }

    /** Holds back what begins a wet wait, as long as that makes a station's sheets lie wet for less. */
    void shortenWetWaiting(int station) {
        StationWork work = works[station];
        remove(station);
        for (TimeLimit limit : work.wet) {
            int[] later = starts[station].clone();
            insertion.delay(work, later, limit);
            if (work.wetWaiting(later) < work.wetWaiting(starts[station])) {
                starts[station] = later;
            }
        }
        put(station, starts[station]);
    }

    int[][] copy() {
        return Arrays.stream(starts).map(int[]::clone).toArray(int[][]::new);
    }

    /** Puts every station where it stood when a copy was taken. */
    void restore(int[][] copy) {
        for (int station = 0; station < works.length; station++) {
            remove(station);
        }
        for (int station = 0; station < works.length; station++) {
            put(station, copy[station]);
        }
    }
}
