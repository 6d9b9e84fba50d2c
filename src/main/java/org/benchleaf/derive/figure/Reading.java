package org.benchleaf.derive.figure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Quantities as they read in a message or beside a formula; pages word their own. */
public final class Reading {

    private static final MathContext FOUR_DIGITS = new MathContext(4, RoundingMode.HALF_EVEN);

    private Reading() {
    }

    /** A quantity with four digits at most, its range or tolerance and its unit. */
    public static String of(Quantity quantity) {
        String unit = quantity.unit().symbol();
        String number = switch (quantity.spread()) {
            case NONE, RESOLUTION -> number(quantity.value());
            case RANGE -> number(quantity.low()) + " to " + number(quantity.high());
            case TOLERANCE -> number(quantity.value()) + " ± " + number(quantity.halfWidth());
        };
        if (quantity.unit() == Unit.PH) {
            return "pH " + number;
        }
        return unit.isEmpty() || quantity.unit() == Unit.COUNT ? number : number + " " + unit;
    }

    /** A number with four digits at most and no trailing noughts. */
    public static String number(double value) {
        if (!Double.isFinite(value)) {
            return String.valueOf(value);
        }
        BigDecimal rounded = new BigDecimal(value).round(FOUR_DIGITS);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** A time in the unit a person would say. */
    public static String minutes(double minutes) {
        if (minutes < 120) {
            return number(minutes) + " min";
        }
        return minutes < 48 * 60 ? number(minutes / 60) + " h" : number(minutes / 1440) + " d";
    }
}
