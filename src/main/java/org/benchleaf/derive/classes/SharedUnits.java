package org.benchleaf.derive.classes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.benchleaf.derive.classes.ScheduleReading.Turn;

/**
 * Which one of a shared thing each station has, where several are in use at once. A station keeps the one that it had before on that day
 * if it is free, else it has the first that is: so the second is first in use when two are in use at once.
 */
public final class SharedUnits {

    /** Things of which every station has its own, and people. */
    private static final List<String> OWN = List.of(StationCut.TRAY, StationCut.BOARD, StationCut.WEIGHT, StationCut.SUPERVISOR);

    private final List<Use> uses = new ArrayList<>();

    /**
     * One of a thing that a station has for some of its work.
     *
     * @param number which one, from 1
     * @param first the piece of work with which it is taken
     * @param last the piece of work with which it is given back
     */
    public record Use(String thing, int number, Turn first, Turn last) {
    }

    /** Of the stations of a plan. */
    public SharedUnits(ScheduleReading reading) {
        reading.shared().stream().filter(one -> one.most() > 1 && !OWN.contains(one.thing())).forEach(one -> give(one,
                reading.holdings(one.thing()).stream().sorted(Comparator.<ScheduleReading.Holding>comparingInt(held ->
                        held.first().start()).thenComparingInt(held -> held.first().station())).toList()));
    }

    private void give(ScheduleReading.Sharing thing, List<ScheduleReading.Holding> holdings) {
        Map<Integer, Integer> busyUntil = new HashMap<>();
        Map<Integer, Integer> had = new HashMap<>();
        LocalDate day = LocalDate.MIN;
        for (ScheduleReading.Holding held : holdings) {
            if (!held.first().from().toLocalDate().equals(day)) {
                day = held.first().from().toLocalDate();
                had.clear();
            }
            int number = IntStream.concat(IntStream.of(had.getOrDefault(held.first().station(), 1)),
                    IntStream.rangeClosed(1, thing.count())).filter(one -> busyUntil.getOrDefault(one, 0) <= held.first().start())
                    .findFirst().orElseThrow();
            busyUntil.put(number, held.last().end());
            had.put(held.first().station(), number);
            uses.add(new Use(thing.thing(), number, held.first(), held.last()));
        }
    }

    /** Which one of a thing is had for a piece of work; empty where only one is in use, or none. */
    public OptionalInt number(Turn turn, String thing) {
        return uses.stream().filter(use -> use.thing().equals(thing) && use.first().station() == turn.station()
                && use.first().part() <= turn.part() && turn.part() <= use.last().part()).mapToInt(Use::number).findFirst();
    }

    /** Every use of one of several, thing by thing, by the clock. */
    public List<Use> uses() {
        return List.copyOf(uses);
    }
}
