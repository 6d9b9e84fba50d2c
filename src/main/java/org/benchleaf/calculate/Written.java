package org.benchleaf.calculate;

import java.util.List;
import java.util.stream.Collectors;
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
        String number = switch (quantity.spread()) {
            case NONE, RESOLUTION -> number(quantity.value());
            case TOLERANCE -> number(quantity.value()) + " ± " + number(quantity.halfWidth());
            case RANGE -> number(quantity.low()) + " to " + number(quantity.high());
        };
        return unit(quantity.unit(), number);
    }

    static String range(double low, double high, Unit unit) {
        return unit(unit, number(low) + " to " + number(high));
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
