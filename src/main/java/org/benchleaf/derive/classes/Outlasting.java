package org.benchleaf.derive.classes;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.model.TestedContact;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * A bath that touches a colour at a station for longer, by the plan, than the longest test that passed. It is counted as the rules of
 * the trade count it, from the first wetting until the first change of wet blotters, by the times of the plan.
 *
 * @param contact what touches what, and the test
 * @param station its number, from 1
 * @param from when the sheet is first wetted with it
 * @param to when it is no longer
 */
public record Outlasting(TestedContact contact, int station, LocalDateTime from, LocalDateTime to) {

    /** What a plan has of it, by contact and station. */
    public static List<Outlasting> of(List<TestedContact> tested, ScheduleReading reading) {
        List<ScheduleReading.Turn> turns = reading.turns();
        return tested.stream().flatMap(contact -> IntStream.rangeClosed(1, turns.stream().mapToInt(ScheduleReading.Turn::station).max()
                .orElse(0)).boxed().flatMap(station -> at(contact, turns.stream().filter(turn -> turn.station() == station).toList())
                        .stream())).filter(Outlasting::isLonger).toList();
    }

    private static Optional<Outlasting> at(TestedContact contact, List<ScheduleReading.Turn> turns) {
        Optional<ScheduleReading.Turn> first = turns.stream().filter(turn -> contact.steps().contains(turn.step())
                && turn.isMainWork()).findFirst();
        Stream<LocalDateTime> changed = turns.stream().filter(turn -> contact.drying().filter(turn.step()::equals).isPresent()
                && turn.isBlotterChanged()).map(ScheduleReading.Turn::from);
        Stream<LocalDateTime> wet = turns.stream().filter(turn -> contact.steps().contains(turn.step()) && (turn.isMainWork()
                || !turn.isHandsOn())).map(ScheduleReading.Turn::to).sorted(Comparator.reverseOrder());
        return first.flatMap(begun -> Stream.concat(changed, wet).findFirst().map(over -> new Outlasting(contact, begun.station(),
                begun.from(), over)));
    }

    /** How long a liquid touches a colour at the station at which it does so for longest; empty where no test is outlasted. */
    public static Optional<Quantity> longest(List<Outlasting> all, String liquid) {
        return all.stream().filter(one -> one.contact().liquid().equals(liquid)).map(Outlasting::lasts)
                .max(Comparator.comparingDouble(Quantity::value));
    }

    /** How long it touches it. */
    public Quantity lasts() {
        return Quantity.of(Duration.between(from, to).toMinutes(), Unit.MINUTE);
    }

    /** Until when it was tested. */
    public LocalDateTime testedUntil() {
        return from.plusMinutes((long) Math.floor(tested()));
    }

    private boolean isLonger() {
        return lasts().lowIn(Unit.MINUTE) > tested();
    }

    private double tested() {
        return contact.test().dwell().map(dwell -> dwell.lowIn(Unit.MINUTE)).orElse(Double.MAX_VALUE);
    }
}
