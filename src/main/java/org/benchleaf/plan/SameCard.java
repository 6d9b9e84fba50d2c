package org.benchleaf.plan;

import java.util.Optional;

/**
 * The same card for everybody: each station does what one alone would do, so many minutes after the one before it. It
 * takes longer than a plan and is calmer.
 *
 * @param every minutes from one station to the next, as few as the things allow
 * @param timetable of all stations
 */
public record SameCard(int every, Timetable timetable) {

    /** The quickest rhythm; empty if the stations do not do the same or closing hours lie in the way of every one. */
    public static Optional<SameCard> of(Classroom classroom) {
        Arrangement alone = new Arrangement(classroom);
        if (!Alike.sameWork(classroom) || !alone.insert(0, 0, 0)) {
            return Optional.empty();
        }
        int[] card = alone.starts(0);
        int length = alone.end(0);
        for (int every = 0; every <= length; every++) {
            int[][] starts = shifted(card, every, classroom.stations().size());
            Timetable timetable = Timetable.of(classroom, starts);
            if (timetable.end() <= classroom.horizon() && TimetableCheck.faults(timetable).isEmpty()) {
                return Optional.of(new SameCard(every, timetable));
            }
        }
        return Optional.empty();
    }

    private static int[][] shifted(int[] card, int every, int stations) {
        int[][] starts = new int[stations][card.length];
        for (int station = 0; station < stations; station++) {
            for (int part = 0; part < card.length; part++) {
                starts[station][part] = card[part] + station * every;
            }
        }
        return starts;
    }
}
