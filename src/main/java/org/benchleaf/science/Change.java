package org.benchleaf.science;

import java.util.List;
import java.util.Optional;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * A measured change and how sure it is.
 *
 * @param mean the mean change, in the unit of the readings
 * @param sd the standard deviation: of the differences where the readings are paired, of both groups pooled where not
 * @param test the test; empty where there are too few readings or they do not scatter
 */
public record Change(Quantity mean, Optional<Quantity> sd, Optional<Test> test) {

    private static final int FEWEST = 3;
    private static final double TAIL = 0.025;
    /** Scatter below this share of the readings is only the last binary place of their differences. */
    private static final double NO_SCATTER = 1e-12;

    /**
     * Student's or Welch's test.
     *
     * @param t the mean change in units of its own standard deviation
     * @param degrees the degrees of freedom
     * @param p how likely such a change is by chance alone
     * @param low the low end of the 95 % interval of the mean change
     * @param high its high end
     */
    public record Test(Quantity t, Quantity degrees, Quantity p, Quantity low, Quantity high) {
    }

    /**
     * Works out the change of places that were each measured before and after.
     *
     * <p>Formula: t = mean(d) / (s_d / √n), n − 1 degrees of freedom, d = after − before.
     *
     * <p>Units: those of the readings; t, degrees and p are plain numbers.
     *
     * <p>Range: as many readings after as before, at least one; a test from three pairs on.
     *
     * <p>Source: Student (1908), Biometrika 6, 1-25.
     *
     * @throws OutsideRange if the lists differ in length or are empty
     */
    public static Change paired(List<Quantity> before, List<Quantity> after) {
        Unit unit = commonUnit(before, after);
        if (before.size() != after.size()) {
            throw new OutsideRange("after", Clause.of("{count} readings", "count", after.size()),
                    Clause.of("{count} readings, one for each before", "count", before.size()),
                    "paired readings belong to the same places; write paired=no where they do not");
        }
        double[] differences = new double[before.size()];
        for (int k = 0; k < differences.length; k++) {
            differences[k] = after.get(k).in(unit) - before.get(k).in(unit);
        }
        double mean = mean(differences);
        double variance = variance(differences, mean);
        return of(mean, scatter(variance, before, unit), variance / differences.length, differences.length - 1,
                differences.length, unit);
    }

    /**
     * Works out the change between two groups of readings that do not belong to the same places.
     *
     * <p>Formula: t = (m₂ − m₁) / √(v₁ + v₂), v = s² / n; degrees = (v₁ + v₂)² / (v₁²/(n₁−1) + v₂²/(n₂−1)).
     *
     * <p>Units: those of the readings; t, degrees and p are plain numbers.
     *
     * <p>Range: at least one reading in each group; a test from three in each on.
     *
     * <p>Source: Welch (1947), Biometrika 34, 28-35.
     *
     * @throws OutsideRange if a list is empty
     */
    public static Change unpaired(List<Quantity> before, List<Quantity> after) {
        Unit unit = commonUnit(before, after);
        double[] first = numbers(before, unit);
        double[] second = numbers(after, unit);
        double m1 = mean(first);
        double m2 = mean(second);
        double s1 = variance(first, m1);
        double s2 = variance(second, m2);
        double v1 = s1 / first.length;
        double v2 = s2 / second.length;
        double freedom = (v1 + v2) * (v1 + v2) / (v1 * v1 / (first.length - 1) + v2 * v2 / (second.length - 1));
        double pooled = (s1 * (first.length - 1) + s2 * (second.length - 1)) / (first.length + second.length - 2);
        return of(m2 - m1, scatter(pooled, before, unit), v1 + v2, freedom, Math.min(first.length, second.length), unit);
    }

    private static Change of(double mean, double sd, double varianceOfMean, double freedom, int fewest, Unit unit) {
        Optional<Quantity> scatter = Double.isNaN(sd) ? Optional.empty() : Optional.of(Quantity.of(sd, unit));
        if (fewest < FEWEST || !(sd > 0)) {
            return new Change(Quantity.of(mean, unit), scatter, Optional.empty());
        }
        double error = Math.sqrt(varianceOfMean);
        double t = mean / error;
        double reach = StudentT.upperPointAt(TAIL, freedom) * error;
        return new Change(Quantity.of(mean, unit), scatter, Optional.of(new Test(Quantity.number(t),
                Quantity.number(freedom), Quantity.number(StudentT.twoSidedAt(t, freedom)),
                Quantity.of(mean - reach, unit), Quantity.of(mean + reach, unit))));
    }

    private static double scatter(double variance, List<Quantity> readings, Unit unit) {
        double largest = 0;
        for (Quantity reading : readings) {
            largest = Math.max(largest, Math.abs(reading.in(unit)));
        }
        double sd = Math.sqrt(variance);
        return sd <= NO_SCATTER * largest ? 0 : sd;
    }

    private static Unit commonUnit(List<Quantity> before, List<Quantity> after) {
        if (before.isEmpty() || after.isEmpty()) {
            throw new OutsideRange(before.isEmpty() ? "before" : "after", Clause.of("no readings"), Clause.of("at least one reading"),
                    "a change needs both ends");
        }
        Unit unit = before.get(0).unit();
        requireKind("before", before, unit);
        requireKind("after", after, unit);
        return unit;
    }

    private static void requireKind(String input, List<Quantity> readings, Unit unit) {
        for (Quantity reading : readings) {
            if (reading.dimension() != unit.dimension()) {
                throw new OutsideRange(input, reading.dimension().clause(),
                        Clause.of("{kind}, as the first reading", "kind", unit.dimension().clause()),
                        "readings of two kinds cannot be subtracted");
            }
        }
    }

    private static double[] numbers(List<Quantity> readings, Unit unit) {
        double[] numbers = new double[readings.size()];
        for (int k = 0; k < numbers.length; k++) {
            numbers[k] = readings.get(k).in(unit);
        }
        return numbers;
    }

    private static double mean(double[] numbers) {
        double sum = 0;
        for (double number : numbers) {
            sum += number;
        }
        return sum / numbers.length;
    }

    /** Not a number for a single reading: one reading has no scatter. */
    private static double variance(double[] numbers, double mean) {
        double sum = 0;
        for (double number : numbers) {
            sum += (number - mean) * (number - mean);
        }
        return numbers.length < 2 ? Double.NaN : sum / (numbers.length - 1);
    }
}
