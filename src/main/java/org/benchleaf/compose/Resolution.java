package org.benchleaf.compose;

import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.benchleaf.derive.Figure;
import org.benchleaf.quantity.Unit;

/**
 * The decimals that a measured result can carry where no spread is known: a colour difference to 0.1, a change of size
 * to 0.1 % with a steel rule, a mean, a standard deviation or a change to one decimal beyond the readings that it was
 * worked out from (common practice, no source).
 */
final class Resolution {

    private static final Map<String, Integer> DECIMALS = Map.of("colour-difference", 1, "yellowness", 1,
            "size-change", 1, "summary", 2, "reach", 2);
    private static final Set<String> OF_READINGS = Set.of("summary", "reach", "activity-mean", "change", "place-changes");
    private static final Set<String> READINGS = Set.of("readings", "before", "after");

    private Resolution() {
    }

    /** The most decimals of a figure; empty where three significant digits are right. */
    static OptionalInt of(Figure figure) {
        if (figure.value().unit() == Unit.COUNT || isChance(figure)) {
            return OptionalInt.empty();
        }
        OptionalInt readings = OF_READINGS.contains(figure.method()) ? ofReadings(figure) : OptionalInt.empty();
        if (readings.isPresent()) {
            return OptionalInt.of(readings.getAsInt() + (isReach(figure) ? 0 : 1));
        }
        Integer decimals = DECIMALS.get(figure.method());
        return decimals == null ? OptionalInt.empty() : OptionalInt.of(decimals);
    }

    /** Whether a figure tells the smallest and the largest of several readings, which keep the readings' own digits. */
    static boolean isReach(Figure figure) {
        return Set.of("reach", "place-changes").contains(figure.method()) && !isMeanOfSpots(figure);
    }

    /** Whether a figure is the mean of several spots with the smallest and the largest of them. */
    static boolean isMeanOfSpots(Figure figure) {
        return figure.method().equals("reach") && !figure.key().qualifier().isEmpty();
    }

    /** Whether a figure tells how often chance alone would give as much. */
    static boolean isChance(Figure figure) {
        return figure.key().name().equals("change-p");
    }

    /** The decimals of the finest reading that was put in; empty if no reading of the case file was. */
    private static OptionalInt ofReadings(Figure figure) {
        return figure.inputs().stream().filter(given -> READINGS.contains(given.key()))
                .flatMap(given -> given.values().stream())
                .mapToInt(reading -> NumberText.decimalsOf(reading.value())).max();
    }
}
