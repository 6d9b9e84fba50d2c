package org.benchleaf.science;

import java.util.List;
import java.util.Optional;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * What several readings come to.
 *
 * @param count how many there are
 * @param mean their arithmetic mean; a plain number where things were counted
 * @param sd their standard deviation; empty for a single reading
 * @param reach the mean between the smallest and the largest reading
 */
public record SeriesSummary(Quantity count, Quantity mean, Optional<Quantity> sd, Quantity reach) {

    /**
     * Works out count, mean, standard deviation and reach.
     *
     * <p>Formula: mean = Σ x / n; s = √(Σ (x − mean)² / (n − 1)).
     *
     * <p>Units: readings of one dimension in; their unit out, for the standard deviation of a pH a plain number.
     *
     * <p>Range: at least one reading.
     *
     * <p>Source: definition.
     *
     * @throws OutsideRange if there is no reading, or the readings are of two dimensions
     */
    public static SeriesSummary of(List<Quantity> readings) {
        double[] numbers = numbers("readings", readings);
        Unit unit = averaged(readings.get(0).unit());
        double mean = mean(numbers);
        Quantity count = Quantity.count(numbers.length);
        if (numbers.length < 2) {
            return new SeriesSummary(count, Quantity.of(mean, unit), Optional.empty(), reach(numbers, unit));
        }
        double squares = 0;
        for (double number : numbers) {
            squares += (number - mean) * (number - mean);
        }
        return new SeriesSummary(count, Quantity.of(mean, unit),
                Optional.of(Quantity.of(Math.sqrt(squares / (numbers.length - 1)), difference(unit))),
                reach(numbers, unit));
    }

    /**
     * The pH that has the mean activity of hydrogen ions.
     *
     * <p>Formula: pH = −log₁₀(Σ 10⁻ᵖᴴ / n).
     *
     * <p>Units: pH in and out.
     *
     * <p>Range: at least one reading.
     *
     * <p>Source: definition of pH.
     *
     * @throws OutsideRange if there is no reading
     */
    public static Quantity activityMean(List<Quantity> readings) {
        double[] numbers = numbers("readings", readings);
        double sum = 0;
        for (double number : numbers) {
            sum += StrictMath.pow(10, -number);
        }
        return Quantity.of(-StrictMath.log10(sum / numbers.length), Unit.PH);
    }

    /**
     * The mean change of several places, between the smallest and the largest change of one place.
     *
     * <p>Formula: d = after − before at each place; mean(d), min(d), max(d).
     *
     * <p>Units: readings of one dimension in; their unit out, for a pH a plain number.
     *
     * <p>Range: as many readings after as before, at least one.
     *
     * <p>Source: definition.
     *
     * @throws OutsideRange if the lists differ in length or dimension, or are empty
     */
    public static Quantity changes(List<Quantity> before, List<Quantity> after) {
        double[] from = numbers("before", before);
        double[] to = numbers("after", after);
        if (from.length != to.length || before.get(0).dimension() != after.get(0).dimension()) {
            throw new OutsideRange("after", readings(to, after.get(0)), readings(from, before.get(0)),
                    "each place was read before and after");
        }
        double factor = after.get(0).unit().factor() / before.get(0).unit().factor();
        double[] differences = new double[from.length];
        for (int k = 0; k < from.length; k++) {
            differences[k] = to[k] * factor - from[k];
        }
        return reach(differences, difference(averaged(before.get(0).unit())));
    }

    private static Clause readings(double[] numbers, Quantity first) {
        return Clause.of("{count} readings, {kind}", "count", numbers.length, "kind", first.dimension().clause());
    }

    /**
     * Whether a change would take the mean of the readings below nothing.
     *
     * <p>Formula: mean + change < 0.
     *
     * <p>Units: a change in the unit of the readings, or a plain number of it.
     *
     * <p>Range: at least one reading.
     *
     * <p>Source: definition.
     *
     * @throws OutsideRange if there is no reading
     */
    public static boolean fallsBelowNothing(List<Quantity> readings, Quantity change) {
        return mean(numbers("readings", readings)) + change.value() < 0;
    }

    /**
     * How many times as active the hydrogen ions were before a change of pH as after it.
     *
     * <p>Formula: ratio = 10^change, at both ends of the change.
     *
     * <p>Units: a change of pH in, a plain number out.
     *
     * <p>Range: −14 to 14.
     *
     * <p>Source: definition of pH.
     *
     * @throws OutsideRange if the change lies outside the range
     */
    public static Quantity activityRatio(Quantity change) {
        Require.within("change", change, -14, 14, Unit.NONE, "the scale of pH");
        return Quantity.between(StrictMath.pow(10, change.low()), StrictMath.pow(10, change.value()),
                StrictMath.pow(10, change.high()), Unit.NONE);
    }

    /**
     * What is left of an amount, and what is gone.
     *
     * @param left what is there after, as a share of what was there before
     * @param removed the rest
     */
    public record LeftAndRemoved(Quantity left, Quantity removed) {
    }

    /**
     * The share of an amount that is left, and the share that was removed.
     *
     * <p>Formula: left = after / before; removed = 1 − left.
     *
     * <p>Units: two amounts of one dimension in, per cent out.
     *
     * <p>Range: before above 0, after 0 or more; more after than before removes less than nothing.
     *
     * <p>Source: definition.
     *
     * @throws OutsideRange if the amounts are of two dimensions or outside the range
     */
    public static LeftAndRemoved left(Quantity before, Quantity after) {
        double first = Require.aboveZero("before", before, before.unit());
        if (after.dimension() != before.dimension()) {
            throw new OutsideRange("after", after.dimension().clause(), before.dimension().clause(), "amounts of one kind");
        }
        double percent = 100 * Require.atLeastZero("after", after, before.unit()) / first;
        return new LeftAndRemoved(Quantity.of(percent, Unit.PERCENT), Quantity.of(100 - percent, Unit.PERCENT));
    }

    private static Quantity reach(double[] numbers, Unit unit) {
        double least = numbers[0];
        double most = numbers[0];
        for (double number : numbers) {
            least = Math.min(least, number);
            most = Math.max(most, number);
        }
        return Quantity.between(least, Math.min(most, Math.max(least, mean(numbers))), most, unit);
    }

    private static double mean(double[] numbers) {
        double sum = 0;
        for (double number : numbers) {
            sum += number;
        }
        return sum / numbers.length;
    }

    private static double[] numbers(String input, List<Quantity> readings) {
        if (readings.isEmpty()) {
            throw new OutsideRange(input, Clause.of("none"), Clause.of("at least one reading"), "a mean of something");
        }
        Unit unit = readings.get(0).unit();
        double[] numbers = new double[readings.size()];
        for (int k = 0; k < numbers.length; k++) {
            if (readings.get(k).dimension() != unit.dimension()) {
                throw new OutsideRange(input, readings.get(k).dimension().clause(), unit.dimension().clause(),
                        "readings of one kind");
            }
            numbers[k] = readings.get(k).in(unit);
        }
        return numbers;
    }

    /** The mean of counts is no count. */
    private static Unit averaged(Unit unit) {
        return unit == Unit.COUNT ? Unit.NONE : unit;
    }

    /** The difference of two pH values is no pH. */
    private static Unit difference(Unit unit) {
        return unit == Unit.PH ? Unit.NONE : unit;
    }
}
