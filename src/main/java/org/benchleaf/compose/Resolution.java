package org.benchleaf.compose;

import java.util.Map;
import java.util.OptionalInt;
import org.benchleaf.derive.Figure;

/**
 * The decimals that a measured result can carry where no spread is known: a colour difference to 0.1, a change of size
 * to 0.1 % with a steel rule, a mean or a standard deviation to one decimal beyond the reading (common practice, no
 * source).
 */
final class Resolution {

    private static final Map<String, Integer> DECIMALS = Map.of("colour-difference", 1, "colour-values", 1,
            "size-change", 1, "summary", 2, "activity-mean", 2);

    private Resolution() {
    }

    /** The most decimals of a figure; empty where three significant digits are right. */
    static OptionalInt of(Figure figure) {
        boolean counted = figure.value().unit() == org.benchleaf.quantity.Unit.COUNT;
        Integer decimals = counted ? null : DECIMALS.get(figure.method());
        return decimals == null ? OptionalInt.empty() : OptionalInt.of(decimals);
    }
}
