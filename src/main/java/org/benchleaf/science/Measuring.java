package org.benchleaf.science;

import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Decimal;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Choosing what to measure with, and how sure the measured amount is. */
public final class Measuring {

    private static final double COVERAGE = 2;
    /** The last places of a binary number must not make one filling more. */
    private static final double NEARLY = 1e-9;

    /**
     * A measuring vessel.
     *
     * @param capacity the most it measures
     * @param tolerance how far it may lie off, either way
     */
    public record Vessel(Quantity capacity, Quantity tolerance) {
    }

    /**
     * A volume and the vessel for it.
     *
     * @param vessel its capacity
     * @param tolerance its tolerance
     * @param uncertainty the expanded uncertainty of the volume, k = 2
     * @param relative the same as a share of the volume
     */
    public record Measured(Quantity vessel, Quantity tolerance, Quantity uncertainty, Quantity relative) {
    }

    private Measuring() {
    }

    /**
     * Chooses the smallest vessel that holds a volume, and works out how sure the measured volume is.
     *
     * <p>Formula: u = a / √6, since a vessel of tolerance ± a more often lies near its mark; U = 2 u.
     *
     * <p>Units: volumes in mL, result in mL and %.
     *
     * <p>Range: above 0, up to the largest vessel.
     *
     * <p>Source: EURACHEM/CITAC guide, Quantifying Uncertainty in Analytical Measurement, example A1.
     *
     * @throws OutsideRange if no vessel holds the volume
     */
    public static Measured choose(Quantity volume, List<Vessel> vessels) {
        double wanted = Require.aboveZero("volume", volume, Unit.MILLILITRE);
        double best = Double.POSITIVE_INFINITY;
        double largest = 0;
        double tolerance = 0;
        for (Vessel vessel : vessels) {
            double capacity = vessel.capacity().in(Unit.MILLILITRE);
            largest = Math.max(largest, capacity);
            if (capacity >= wanted && capacity < best) {
                best = capacity;
                tolerance = vessel.tolerance().in(Unit.MILLILITRE);
            }
        }
        if (Double.isInfinite(best)) {
            throw new OutsideRange("volume", Clause.value(wanted + " mL"),
                    Clause.of("more than 0, up to {largest}", "largest", largest + " mL"),
                    "the largest vessel listed; measure in portions");
        }
        double expanded = ofVessel(Quantity.of(tolerance, Unit.MILLILITRE), 1).value();
        return new Measured(Quantity.of(best, Unit.MILLILITRE), Quantity.of(tolerance, Unit.MILLILITRE),
                Quantity.of(expanded, Unit.MILLILITRE), Quantity.of(100 * expanded / wanted, Unit.PERCENT));
    }

    /**
     * Expanded uncertainty (k = 2) of a volume measured in several fillings of one vessel.
     *
     * <p>Formula: U = 2 a / √6 · √n, since a vessel of tolerance ± a more often lies near its mark and fillings add as
     * squares.
     *
     * <p>Units: mL in and out.
     *
     * <p>Range: tolerance 0 or more, at least one filling.
     *
     * <p>Source: JCGM 100:2008 (GUM), 4.3.9; EURACHEM/CITAC guide, example A1.
     *
     * @throws OutsideRange if the tolerance is below 0
     */
    public static Quantity ofVessel(Quantity tolerance, int fillings) {
        return Quantity.of(COVERAGE * Require.atLeastZero("tolerance", tolerance, Unit.MILLILITRE) / Math.sqrt(6)
                * Math.sqrt(fillings), Unit.MILLILITRE);
    }

    /**
     * Expanded uncertainty (k = 2) of a mass weighed as a difference: the empty vessel is weighed too.
     *
     * <p>Formula: U = 2 √2 (d / 2) / √3, a step d being a rectangular distribution of half a step.
     *
     * <p>Units: g in and out.
     *
     * <p>Range: step 0 or more.
     *
     * <p>Source: JCGM 100:2008 (GUM), 4.3.7 and F.2.2.1.
     *
     * @throws OutsideRange if the step is below 0
     */
    public static Quantity ofBalance(Quantity step) {
        return Quantity.of(COVERAGE * Math.sqrt(2) * Require.atLeastZero("step", step, Unit.GRAM) / 2 / Math.sqrt(3),
                Unit.GRAM);
    }

    /**
     * An amount as an instrument shows it.
     *
     * <p>Formula: the nearest whole number of steps.
     *
     * <p>Units: an amount and a step of one dimension; the unit of the step out.
     *
     * <p>Range: amount 0 or more, step above 0.
     *
     * <p>Source: definition.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Quantity shown(Quantity amount, Quantity step) {
        double d = Require.aboveZero("step", step, step.unit());
        double steps = Decimal.of(Require.atLeastZero("amount", amount, step.unit()) / d).rounded(0).value();
        // Ten digits: decimal steps leave last places in binary numbers.
        return Quantity.of(Decimal.of(steps * d).significant(10).value(),
                step.unit());
    }

    /**
     * The step to which a hand weighs an amount: no finer than the balance, and no finer than its third digit.
     *
     * <p>Formula: the larger of the step and 10^(⌊log₁₀ amount⌋ − 2).
     *
     * <p>Units: masses; g out.
     *
     * <p>Range: amount and step above 0.
     *
     * <p>Source: common practice, no source: a preparation needs no weighing to better than a hundredth.
     *
     * @throws OutsideRange if a value is not above 0
     */
    public static Quantity handStep(Quantity amount, Quantity step) {
        double grams = Require.aboveZero("amount", amount, Unit.GRAM);
        double third = Decimal.step(2 - Decimal.of(grams).magnitude());
        return Quantity.of(Math.max(Require.aboveZero("step", step, Unit.GRAM), third), Unit.GRAM);
    }

    /**
     * An excess as a hand weighs it: at least the amount, as 1, 2 or 5 and noughts.
     *
     * <p>Formula: the amount rounded up to 1, 2, 5 or 10 times a power of ten.
     *
     * <p>Units: a mass in, g out.
     *
     * <p>Range: amount above 0.
     *
     * <p>Source: common practice, no source: of what is to stay undissolved more does no harm.
     *
     * @throws OutsideRange if the amount is not above 0
     */
    public static Quantity excess(Quantity amount) {
        double grams = Require.aboveZero("amount", amount, Unit.GRAM);
        int power = Decimal.of(grams).magnitude();
        return Quantity.of(Stream.of("1", "2", "5", "10").mapToDouble(times -> Decimal.read(times).shifted(power).value())
                .filter(step -> step >= grams).findFirst().orElseThrow(), Unit.GRAM);
    }

    /**
     * How far a measured amount may lie off, as a share of it.
     *
     * <p>Formula: 100 · U / amount.
     *
     * <p>Units: an amount and its uncertainty of one dimension in, per cent out.
     *
     * <p>Range: amount above 0.
     *
     * <p>Source: definition.
     *
     * @throws OutsideRange if the amount is not above 0
     */
    public static Quantity relative(Quantity amount, Quantity uncertainty) {
        return Quantity.of(100 * uncertainty.in(amount.unit()) / Require.aboveZero("amount", amount, amount.unit()), Unit.PERCENT);
    }

    /**
     * Whether a step is fine enough to measure an amount.
     *
     * <p>Formula: step ≤ share · amount.
     *
     * <p>Units: an amount and a step of one dimension; the share in %.
     *
     * <p>Range: all 0 or more.
     *
     * <p>Source: common practice, no source.
     */
    public static boolean isFineEnough(Quantity step, Quantity amount, Quantity share) {
        return step.in(amount.unit()) <= share.in(Unit.PERCENT) / 100 * amount.value();
    }

    /**
     * How often a vessel is filled to its mark for a volume, the last time perhaps less.
     *
     * <p>Formula: ⌈volume / capacity⌉.
     *
     * <p>Units: volumes in, a count out.
     *
     * <p>Range: volume 0 or more, capacity above 0.
     *
     * <p>Source: definition.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Quantity fillings(Quantity volume, Quantity capacity) {
        double times = Require.atLeastZero("volume", volume, Unit.MILLILITRE)
                / Require.aboveZero("capacity", capacity, Unit.MILLILITRE);
        return Quantity.of(Math.ceil(times - NEARLY), Unit.COUNT);
    }
}
