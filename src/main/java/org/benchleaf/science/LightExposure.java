package org.benchleaf.science;

import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Light that falls on a sheet, as illuminance and as exposure. */
public final class LightExposure {

    private LightExposure() {
    }

    /**
     * Works out how much light falls on a sheet in all.
     *
     * <p>Formula: H = E t.
     *
     * <p>Units: an illuminance and a time in; megalux hours out.
     *
     * <p>Range: both 0 or more.
     *
     * <p>Source: definition of luminous exposure, CIE 157:2004.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Quantity exposure(Quantity illuminance, Quantity time) {
        return Quantity.of(1e-6 * Require.atLeastZero("illuminance", illuminance, Unit.LUX)
                * Require.atLeastZero("time", time, Unit.HOUR), Unit.MEGALUX_HOUR);
    }
}
