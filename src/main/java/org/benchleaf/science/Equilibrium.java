package org.benchleaf.science;

import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * Equilibrium constants of lime, carbonic acid and calcite in water, as they change with temperature.
 *
 * <p>Constants with an enthalpy follow van 't Hoff: log K(T) = log K₂₅ − ΔH / (ln 10 · R) · (1/T − 1/298.15).
 * Analytic ones: log K = a₁ + a₂ T + a₃/T + a₄ log₁₀ T + a₅/T². Activities; gas pressures in atmospheres.
 *
 * <p>Sources: U.S. Geological Survey, PHREEQC databases minteq.v4.dat (NIST 46) for lime and water, wateq4f.dat for
 * the carbonate system (Plummer and Busenberg 1982, Geochim. Cosmochim. Acta 46, 1011-1040).
 */
public enum Equilibrium {
    /** Ca(OH)₂(s) + 2 H⁺ = Ca²⁺ + 2 H₂O. */
    LIME(22.804, -128_620),
    /** Ca²⁺ + H₂O = CaOH⁺ + H⁺; with its temperature term, without which cold limewater comes out twice too strong. */
    HYDROXO(-12.697, 64_110),
    /** H₂O = H⁺ + OH⁻, in the set of constants that lime is worked out with. */
    WATER(-13.997, 55_810),
    /** H₂O = H⁺ + OH⁻, in the set of constants of the carbonate system. */
    WATER_WITH_CARBONATE(-283.971, -0.05069842, 13_323, 102.24447, -1_119_669),
    /** CO₃²⁻ + H⁺ = HCO₃⁻. */
    BICARBONATE(107.8871, 0.03252849, -5151.79, -38.92561, 563_713.9),
    /** CO₃²⁻ + 2 H⁺ = CO₂(aq) + H₂O. */
    CARBONIC_ACID(464.1965, 0.09344813, -26_986.16, -165.75951, 2_248_628.9),
    /** CO₂(g) = CO₂(aq), in mol/kg for one atmosphere, not one bar. */
    CARBON_DIOXIDE(108.3865, 0.01985076, -6919.53, -40.45154, 669_365),
    /** Calcite = Ca²⁺ + CO₃²⁻. */
    CALCITE(-171.9065, -0.077993, 2839.319, 71.595, 0),
    /** Aragonite = Ca²⁺ + CO₃²⁻. */
    ARAGONITE(-171.9773, -0.077993, 2903.293, 71.595, 0),
    /** Ca²⁺ + HCO₃⁻ = CaHCO₃⁺. */
    CALCIUM_BICARBONATE(1209.12, 0.31294, -34_765.05, -478.782, 0),
    /** Ca²⁺ + CO₃²⁻ = CaCO₃(aq). */
    CALCIUM_CARBONATE(-1228.732, -0.299444, 35_512.75, 485.818, 0);

    private static final double REFERENCE_KELVIN = 298.15;
    /** As the databases themselves use it, J/(mol K). */
    private static final double GAS_CONSTANT = 8.314;

    private final double[] terms;

    Equilibrium(double... terms) {
        this.terms = terms;
    }

    /**
     * Gives the decimal logarithm of the constant.
     *
     * <p>Formula: van 't Hoff or the analytic expression, as the class says.
     *
     * <p>Units: °C in, a plain number out.
     *
     * <p>Range: 0 to 50 °C.
     *
     * <p>Source: as the class says.
     *
     * @throws OutsideRange if the temperature lies outside the range
     */
    public Quantity logConstant(Quantity temperature) {
        double kelvin = Vapour.KELVIN + Require.within("temperature", temperature, 0, 50, Unit.CELSIUS,
                "range of the solubility measurements behind the constants");
        return Quantity.number(log(kelvin));
    }

    double at(double kelvin) {
        return StrictMath.pow(10, log(kelvin));
    }

    private double log(double kelvin) {
        if (terms.length == 2) {
            return terms[0] - terms[1] / (StrictMath.log(10) * GAS_CONSTANT) * (1 / kelvin - 1 / REFERENCE_KELVIN);
        }
        return terms[0] + terms[1] * kelvin + terms[2] / kelvin + terms[3] * StrictMath.log10(kelvin)
                + terms[4] / (kelvin * kelvin);
    }
}
