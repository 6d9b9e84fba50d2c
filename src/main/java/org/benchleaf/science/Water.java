package org.benchleaf.science;

import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Water itself. */
public final class Water {

    static final String RANGE_SOURCE = "Tanaka et al. (2001), Metrologia 38, 301";

    private Water() {
    }

    /**
     * Works out the density of pure water.
     *
     * <p>Formula: ρ = 999.974950 [1 − (t − 3.983035)² (t + 301.797) / (522528.9 (t + 69.34881))].
     *
     * <p>Units: °C in, kg/m³ out.
     *
     * <p>Range: 0 to 40 °C.
     *
     * <p>Source: Tanaka, Girard, Davis, Peuto and Bignell (2001), Metrologia 38, 301-309, equation 1.
     *
     * @throws OutsideRange if the temperature lies outside the range
     */
    public static Quantity density(Quantity temperature) {
        double t = Require.within("temperature", temperature, 0, 40, Unit.CELSIUS, RANGE_SOURCE);
        return Quantity.of(densityAt(t), Unit.KILOGRAM_PER_CUBIC_METRE);
    }

    static double densityAt(double t) {
        double fromDensest = t - 3.983035;
        return 999.974950 * (1 - fromDensest * fromDensest * (t + 301.797) / (522528.9 * (t + 69.34881)));
    }
}
