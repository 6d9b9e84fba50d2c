package org.benchleaf.science;

import java.util.List;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Choosing what to measure with, and how sure the measured amount is. */
public final class Measuring {

    private static final double COVERAGE = 2;

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
            throw new OutsideRange("volume", wanted + " mL", "more than 0, up to " + largest + " mL",
                    "the largest vessel listed; measure in portions");
        }
        double expanded = COVERAGE * tolerance / Math.sqrt(6);
        return new Measured(Quantity.of(best, Unit.MILLILITRE), Quantity.of(tolerance, Unit.MILLILITRE),
                Quantity.of(expanded, Unit.MILLILITRE), Quantity.of(100 * expanded / wanted, Unit.PERCENT));
    }
}
