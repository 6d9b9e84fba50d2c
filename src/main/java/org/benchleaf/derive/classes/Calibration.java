package org.benchleaf.derive.classes;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * A meter of a class, which is calibrated before it is first used on a day.
 *
 * @param meter its number, from 1
 * @param of how many are used on that day
 * @param begin the latest time at which to begin
 * @param takes how long that usually takes
 * @param used by when it must be over
 */
public record Calibration(int meter, int of, LocalDateTime begin, Quantity takes, LocalDateTime used) {

    /**
     * One for each meter and each day on which it is used, in order, by one pair of hands; none where the class uses none.
     *
     * @param takes how long one takes
     */
    public static List<Calibration> of(ScheduleReading reading, Quantity takes) {
        Map<LocalDate, List<ScheduleReading.Turn>> days = reading.turns().stream().filter(ScheduleReading.Turn::isMetered)
                .collect(Collectors.groupingBy(turn -> turn.from().toLocalDate(), TreeMap::new, Collectors.toList()));
        List<Calibration> calibrations = new ArrayList<>();
        days.values().forEach(turns -> calibrations.addAll(ofADay(firstUses(turns), takes)));
        return calibrations;
    }

    /** When so many meters are first in use at once: one, two, … */
    private static List<LocalDateTime> firstUses(List<ScheduleReading.Turn> turns) {
        Map<Integer, LocalDateTime> first = new TreeMap<>();
        turns.forEach(turn -> first.merge((int) turns.stream().filter(other -> !other.from().isAfter(turn.from())
                && other.to().isAfter(turn.from())).count(), turn.from(), (one, other) -> one.isBefore(other) ? one : other));
        List<LocalDateTime> uses = new ArrayList<>();
        int most = first.keySet().stream().mapToInt(Integer::intValue).max().orElse(0);
        for (int meters = 1; meters <= most; meters++) {
            int least = meters;
            first.entrySet().stream().filter(entry -> entry.getKey() >= least).map(Map.Entry::getValue).min(LocalDateTime::compareTo)
                    .ifPresent(uses::add);
        }
        return uses;
    }

    private static List<Calibration> ofADay(List<LocalDateTime> uses, Quantity takes) {
        List<Calibration> day = new ArrayList<>();
        long minutes = (long) takes.highIn(Unit.MINUTE);
        LocalDateTime limit = LocalDateTime.MAX;
        for (int meter = uses.size(); meter > 0; meter--) {
            LocalDateTime used = uses.get(meter - 1).isBefore(limit) ? uses.get(meter - 1) : limit;
            limit = used.minusMinutes(minutes);
            day.add(0, new Calibration(meter, uses.size(), limit, takes, used));
        }
        return day;
    }
}
