package org.benchleaf.science;

import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Decimal;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Hands out the number of a quantity once it is known to lie in a formula's range. */
final class Require {

    /** Two spellings of one amount (1 L, 1000 mL) may differ in the last place; an end of a range includes both. */
    private static final double SLACK = 1e-12;

    /** Beyond any amount on a bench; keeps products of several inputs within what a double holds. */
    private static final double MOST = 1e15;
    private static final double LEAST = 1e-30;

    private Require() {
    }

    static double within(String input, Quantity quantity, double low, double high, Unit unit, String source) {
        double value = quantity.in(unit);
        double slack = SLACK * Math.max(Math.abs(low), Math.abs(high));
        if (!(low - slack <= value && value <= high + slack)) {
            throw new OutsideRange(input, written(value, unit),
                    Clause.of("{low} to {high}", "low", Decimal.text(low), "high", unit(high, unit)), source);
        }
        return Math.min(high, Math.max(low, value));
    }

    static double atLeastZero(String input, Quantity quantity, Unit unit) {
        double value = quantity.in(unit);
        if (!(value >= 0 && value <= MOST)) {
            throw new OutsideRange(input, written(value, unit), Clause.of("0 or more"), "an amount cannot be negative or endless");
        }
        return value;
    }

    static double aboveZero(String input, Quantity quantity, Unit unit) {
        double value = quantity.in(unit);
        if (!(value >= LEAST && value <= MOST)) {
            throw new OutsideRange(input, written(value, unit), Clause.of("more than 0"), "an amount that is there and has an end");
        }
        return value;
    }

    static int wholeAtLeast(int least, String input, Quantity quantity) {
        double value = quantity.in(Unit.COUNT);
        if (value != Math.rint(value) || value < least || value > 1_000_000) {
            throw new OutsideRange(input, Clause.value(Decimal.text(value)), Clause.of("a whole number, {least} or more", "least", least),
                    "a count of things");
        }
        return (int) value;
    }

    private static Clause written(double value, Unit unit) {
        return Clause.value(unit(value, unit));
    }

    private static String unit(double value, Unit unit) {
        return unit.symbol().isEmpty() ? Decimal.text(value) : Decimal.text(value) + " " + unit.symbol();
    }
}
