package org.benchleaf.compose.part;

import java.util.EnumSet;
import java.util.Set;
import org.benchleaf.calculate.Figure;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;

/** Tells the strengths of solutions from other numbers, because the public page may have to leave them out. */
final class StrengthFigures {

    private static final Set<Dimension> DIMENSIONS = EnumSet.of(Dimension.VOLUME_FRACTION, Dimension.MASS_FRACTION,
            Dimension.MASS_PER_VOLUME, Dimension.AMOUNT_PER_VOLUME);
    /** Inputs that give a strength without a unit: "1 + 5", "1 in 10". */
    private static final Set<String> BARE_KEYS = Set.of("parts", "one-in", "strength");

    private StrengthFigures() {
    }

    static boolean isOne(Quantity quantity) {
        return DIMENSIONS.contains(quantity.dimension());
    }

    static boolean isOne(Figure.Given given) {
        return BARE_KEYS.contains(given.key())
                || given.values().stream().anyMatch(StrengthFigures::isOne);
    }
}
