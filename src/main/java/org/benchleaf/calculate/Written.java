package org.benchleaf.calculate;

import java.util.List;
import java.util.stream.Collectors;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Decimal;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Quantities as they read in a list of what was put in: every digit, and no more words than an author would use. */
public final class Written {

    private Written() {
    }

    static String of(List<Quantity> quantities) {
        return quantities.stream().map(Written::of).collect(Collectors.joining(", "));
    }

    static String of(Quantity quantity) {
        return said(quantity).english();
    }

    /** A quantity as part of a sentence. */
    static Clause said(Quantity quantity) {
        return switch (quantity.spread()) {
            case NONE, RESOLUTION -> Clause.value(unit(quantity.unit(), number(quantity.value())));
            case TOLERANCE -> Clause.value(unit(quantity.unit(), number(quantity.value()) + " ± " + number(quantity.halfWidth())));
            case RANGE -> range(quantity.low(), quantity.high(), quantity.unit());
        };
    }

    /** Several quantities and how many they are, as part of a sentence. */
    static Clause numbers(List<Quantity> quantities) {
        return Clause.of("{count} numbers: {numbers}", "count", quantities.size(),
                "numbers", Clause.list(quantities.stream().map(Written::said).toList()));
    }

    static Clause range(double low, double high, Unit unit) {
        return unit == Unit.PH ? Clause.of("{low} to {high}", "low", unit(unit, number(low)), "high", number(high))
                : Clause.of("{low} to {high}", "low", number(low), "high", unit(unit, number(high)));
    }

    public static String number(double number) {
        if (number == Math.rint(number) && Math.abs(number) < 1e15) {
            return String.valueOf((long) number);
        }
        return Math.abs(number) >= 1e-6 && Math.abs(number) < 1e15 ? Decimal.of(number).plain() : Decimal.text(number);
    }

    private static String unit(Unit unit, String number) {
        return switch (unit) {
            case PH -> "pH " + number;
            case COUNT, NONE -> number;
            default -> number + " " + unit.symbol();
        };
    }
}
