package org.benchleaf.quantity;

/**
 * A number with its unit and how far it may lie off.
 *
 * <p>{@code value}, {@code low} and {@code high} are in {@code unit}, with low ≤ value ≤ high. An exact quantity
 * has all three alike; a range ("15 min to 30 min") has its middle as value; a tolerance ("7.4 ± 0.1") and
 * a reading ("412 mm" off a rule) are symmetrical.
 */
public record Quantity(double value, double low, double high, Unit unit, Spread spread) {

    /** How the low and high ends came about, which decides how they are printed and combined. */
    public enum Spread {
        /** One number; low and high equal it. */
        NONE,
        /** Two ends that someone chose or that follow from such ends: "15 to 30 min". */
        RANGE,
        /**
         * One number as it was read off a rule, a balance or an instrument; its ends are the expanded uncertainty (k = 2)
         * that its last digit leaves.
         */
        RESOLUTION,
        /** A measured number and its expanded uncertainty (k = 2): "7.4 ± 0.1". */
        TOLERANCE
    }

    public Quantity {
        if (!(low <= value && value <= high)) {
            throw new IllegalArgumentException("not in order: low " + Decimal.text(low) + ", value " + Decimal.text(value)
                    + ", high " + Decimal.text(high));
        }
    }

    /** An exact quantity. */
    public static Quantity of(double value, Unit unit) {
        return new Quantity(value, value, value, unit, Spread.NONE);
    }

    /** A count of things. */
    public static Quantity count(long value) {
        return of(value, Unit.COUNT);
    }

    /** A plain number without unit. */
    public static Quantity number(double value) {
        return of(value, Unit.NONE);
    }

    /** A range between two ends, its middle standing for it where one number is needed. */
    public static Quantity range(double low, double high, Unit unit) {
        return new Quantity(low + (high - low) / 2, low, high, unit, low == high ? Spread.NONE : Spread.RANGE);
    }

    /** A value between two ends that need not lie evenly around it. */
    public static Quantity between(double low, double value, double high, Unit unit) {
        return new Quantity(value, low, high, unit, low == high ? Spread.NONE : Spread.RANGE);
    }

    /** A value with its expanded uncertainty on both sides. */
    public static Quantity plusMinus(double value, double halfWidth, Unit unit) {
        return new Quantity(value, value - halfWidth, value + halfWidth, unit,
                halfWidth == 0 ? Spread.NONE : Spread.TOLERANCE);
    }

    /**
     * A number read to a step of its instrument.
     *
     * <p>Formula: value ± step / √3, a step being a rectangular distribution with u = 0.29 step and k = 2.
     *
     * <p>Source: JCGM 100:2008 (GUM), F.2.2.1.
     */
    public static Quantity reading(double value, double step, Unit unit) {
        return resolved(value, step / Math.sqrt(3), unit);
    }

    /** A number known to the last digits of the readings that it is of or follows from. */
    public static Quantity resolved(double value, double halfWidth, Unit unit) {
        return new Quantity(value, value - halfWidth, value + halfWidth, unit,
                halfWidth == 0 ? Spread.NONE : Spread.RESOLUTION);
    }

    /** An exact number as a reading, its step that of the last digit that is not nought; one with a spread keeps it. */
    public Quantity asRead() {
        return spread == Spread.NONE && unit != Unit.COUNT ? reading(value, lastDigit(Decimal.of(value)), unit) : this;
    }

    /** The step of the last digit; noughts before the decimal mark count as read. */
    private static double lastDigit(Decimal shortest) {
        return shortest.scale() <= 0 ? 1 : Decimal.step(shortest.scale());
    }

    /** The dimension of the unit. */
    public Dimension dimension() {
        return unit.dimension();
    }

    /**
     * The value alone, in another unit of the same dimension.
     *
     * @throws IllegalArgumentException if the other unit measures something else
     */
    public double in(Unit other) {
        return convert(value, other);
    }

    /** The low end, in another unit of the same dimension. */
    public double lowIn(Unit other) {
        return convert(low, other);
    }

    /** The high end, in another unit of the same dimension. */
    public double highIn(Unit other) {
        return convert(high, other);
    }

    /**
     * The same quantity written in another unit of the same dimension.
     *
     * @throws IllegalArgumentException if the other unit measures something else
     */
    public Quantity to(Unit other) {
        return new Quantity(in(other), lowIn(other), highIn(other), other, spread);
    }

    /** The same unit with the value alone, its spread forgotten. */
    public Quantity exact() {
        return of(value, unit);
    }

    /** A reading as the number that was read, for a limit that is set for such numbers; anything else as it is. */
    public Quantity asStated() {
        return spread == Spread.RESOLUTION ? exact() : this;
    }

    /** All that rounds to the last digit of a {@link #reading}: half its step to either side. */
    public Quantity rounding() {
        return range(value - step() / 2, value + step() / 2, unit);
    }

    /**
     * All that a number told as "about" leaves open, with its middle; a range as it is.
     *
     * <p>Formula: value ± half a step of its last digit, which is counted in fives where that digit is a five or a nought; the half is
     * held between two shares of the value. With a tenth and a quarter about 3 h is 2.5 h to 3.5 h, about 20 min is 17.5 min to 22.5 min,
     * about 100 min is 90 min to 110 min, about 8 wk is 7.2 wk to 8.8 wk.
     *
     * <p>Source: common practice, no source.
     *
     * @param least share of the value that stays open at least either way, 0 to 100 %
     * @param most share of the value that stays open at most either way, {@code least} to 100 %
     */
    public Quantity about(Quantity least, Quantity most) {
        if (spread == Spread.RANGE) {
            return this;
        }
        double digit = Decimal.step(Math.max(0, Decimal.of(value).scale()));
        double half = (isMultiple(digit * 5) ? digit * 5 : digit) / 2;
        double percent = Math.abs(value) / 100;
        double open = Math.min(Math.max(half, percent * least.in(Unit.PERCENT)), percent * most.in(Unit.PERCENT));
        return between(value - open, value, value + open, unit);
    }

    private boolean isMultiple(double step) {
        return value != 0 && Math.abs(value / step - Math.rint(value / step)) < 1e-9;
    }

    /** Half the distance between the ends, in this quantity's unit. */
    public double halfWidth() {
        return (high - low) / 2;
    }

    /** The step to which a {@link #reading} was read; for other spreads a number without meaning. */
    public double step() {
        return halfWidth() * Math.sqrt(3);
    }

    private double convert(double number, Unit other) {
        if (other == unit) {
            return number;
        }
        if (other.dimension() != unit.dimension()) {
            throw new IllegalArgumentException(unit + " is " + unit.dimension().words() + ", but "
                    + other + " is " + other.dimension().words());
        }
        return number * unit.factor() / other.factor();
    }
}
