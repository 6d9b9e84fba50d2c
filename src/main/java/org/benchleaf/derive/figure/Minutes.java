package org.benchleaf.derive.figure;

import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** A time in minutes as it goes quickly, usually and slowly. */
public record Minutes(double low, double usual, double high) {

    public static final Minutes NONE = new Minutes(0, 0, 0);

    public static Minutes of(Quantity time) {
        return new Minutes(time.lowIn(Unit.MINUTE), time.in(Unit.MINUTE), time.highIn(Unit.MINUTE));
    }

    public static Minutes between(double low, double high) {
        return new Minutes(low, low + (high - low) / 2, high);
    }

    public Minutes plus(Minutes other) {
        return new Minutes(low + other.low, usual + other.usual, high + other.high);
    }

    /** What is left of a time of which the other is a part. */
    public Minutes minus(Minutes part) {
        return new Minutes(low - part.low, usual - part.usual, high - part.high);
    }

    public Minutes times(double factor) {
        return new Minutes(low * factor, usual * factor, high * factor);
    }

    public Minutes max(Minutes other) {
        return new Minutes(Math.max(low, other.low), Math.max(usual, other.usual), Math.max(high, other.high));
    }

    public Minutes min(Minutes other) {
        return new Minutes(Math.min(low, other.low), Math.min(usual, other.usual), Math.min(high, other.high));
    }

    /** The time as a quantity, a range where it has two ends. */
    public Quantity quantity() {
        return Quantity.between(low, usual, high, Unit.MINUTE);
    }
}
