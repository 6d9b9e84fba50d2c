package org.benchleaf.science;

import java.util.Optional;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Solvent vapour in a room or a box: how much, and how near to the limits of fire and of health. */
public final class Vapour {

    /** Gas constant, J/(mol K). Source: CODATA 2018, exact since 2019. */
    static final double GAS_CONSTANT = 8.314462618;
    static final double ATMOSPHERE = 101_325;
    static final double KELVIN = 273.15;

    /**
     * What a liquid's vapour is measured against.
     *
     * @param molarMass the molar mass of the liquid
     * @param lowerLimit the lower explosive limit by volume of air; a range where published values differ
     * @param exposureLimit the limit for a working day of eight hours
     */
    public record Limits(Quantity molarMass, Quantity lowerLimit, Quantity exposureLimit) {
    }

    /** How a room is aired: changes of air and the time over which the liquid evaporates evenly. */
    public record Airing(Quantity airChanges, Quantity over) {
    }

    /**
     * The vapour in a room at its strongest.
     *
     * @param mass the solvent that evaporates
     * @param concentration mass in a volume of air
     * @param partsPerMillion the same by volume
     * @param shareOfLowerLimit share of the lower explosive limit; its high end uses the lower published limit
     * @param shareOfExposureLimit share of the limit for a working day
     */
    public record InRoom(Quantity mass, Quantity concentration, Quantity partsPerMillion, Quantity shareOfLowerLimit,
            Quantity shareOfExposureLimit) {
    }

    private Vapour() {
    }

    /**
     * Works out the strongest vapour in a room when all the ethanol of a mixture evaporates there.
     *
     * <p>Formula: without airing c = m / V. With airing c = G / (n V) · (1 − exp(−n t)), G = m / t, the concentration
     * in a well-mixed room when the last of the liquid is gone. ppm = c R T / (M P), P = 101.325 kPa.
     *
     * <p>Units: strength in % v/v at 20 °C, volume of liquid at 20 °C, result in mg/m³ and ppm.
     *
     * <p>Range: strength 0 to 100 % v/v; room, air changes and time above 0; −20 ≤ t ≤ 40 °C.
     *
     * <p>Source: conservation of mass in a well-mixed room; density of OIML R 22 (1975); ideal gas.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static InRoom ofEthanol(Quantity strength, Quantity volume, Quantity room, Optional<Airing> airing,
            Quantity temperature, Limits limits) {
        double share = EthanolWater.massShare(EthanolWater.strength("strength", strength));
        double mass = Require.atLeastZero("volume", volume, Unit.CUBIC_METRE)
                * EthanolWater.densityAt(share, 20) * share;
        double concentration = mass / Require.aboveZero("room", room, Unit.CUBIC_METRE) * left(airing);
        double kelvin = EthanolWater.celsius(temperature) + KELVIN;
        double molarMass = limits.molarMass().in(Unit.GRAM_PER_MOLE) / 1000;
        double fraction = concentration * GAS_CONSTANT * kelvin / (molarMass * ATMOSPHERE);
        return new InRoom(Quantity.of(mass * 1000, Unit.GRAM),
                Quantity.of(concentration * 1e6, Unit.MILLIGRAM_PER_CUBIC_METRE), Quantity.of(fraction * 1e6, Unit.PPM),
                shareOf(fraction, limits.lowerLimit()),
                Quantity.of(fraction * 1e8 / limits.exposureLimit().in(Unit.PPM), Unit.PERCENT));
    }

    /**
     * Works out the vapour pressure of pure ethanol.
     *
     * <p>Formula: log₁₀(P / Pa) = 10.33675 − 1648.22 / (T / K − 42.232).
     *
     * <p>Units: °C in, Pa out.
     *
     * <p>Range: 276.5 to 369.5 K, that is 3.35 to 96.35 °C.
     *
     * <p>Source: Antoine constants of Poling, Prausnitz and O'Connell (2001), The Properties of Gases and Liquids.
     *
     * @throws OutsideRange if the temperature lies outside the range
     */
    static Quantity ethanolPressure(Quantity temperature) {
        double kelvin = KELVIN + Require.within("temperature", temperature, 3.35, 96.35, Unit.CELSIUS,
                "Poling, Prausnitz and O'Connell (2001), Antoine constants of ethanol");
        return Quantity.of(StrictMath.pow(10, 10.33675 - 1648.22 / (kelvin - 42.232)), Unit.PASCAL);
    }

    /**
     * Works out the most ethanol vapour that air can hold, by volume, above the pure liquid.
     *
     * <p>Formula: P(t) / 101.325 kPa.
     *
     * <p>Units: °C in, ppm out.
     *
     * <p>Range: as for {@link #ethanolPressure}.
     *
     * <p>Source: as for {@link #ethanolPressure}; ideal gas.
     *
     * @throws OutsideRange if the temperature lies outside the range
     */
    public static Quantity ethanolSaturation(Quantity temperature) {
        return Quantity.of(1e6 * ethanolPressure(temperature).value() / ATMOSPHERE, Unit.PPM);
    }

    /**
     * Works out a concentration by mass from one by volume.
     *
     * <p>Formula: c = x M P / (R T), P = 101.325 kPa.
     *
     * <p>Units: ppm, g/mol and °C in, mg/m³ out.
     *
     * <p>Range: above −273.15 °C.
     *
     * <p>Source: ideal gas law.
     *
     * @throws OutsideRange if the temperature is not above absolute zero
     */
    public static Quantity byMass(Quantity partsPerMillion, Quantity molarMass, Quantity temperature) {
        double kelvin = KELVIN + Require.within("temperature", temperature, -KELVIN + 1e-9, 1e6, Unit.CELSIUS,
                "absolute zero");
        double moles = partsPerMillion.in(Unit.PPM) * 1e-6 * ATMOSPHERE / (GAS_CONSTANT * kelvin);
        return Quantity.of(moles * molarMass.in(Unit.GRAM_PER_MOLE) * 1000, Unit.MILLIGRAM_PER_CUBIC_METRE);
    }

    /** The share of the evaporated mass that is in the air at the end. */
    private static double left(Optional<Airing> airing) {
        if (airing.isEmpty()) {
            return 1;
        }
        double changes = Require.aboveZero("air-changes", airing.get().airChanges(), Unit.PER_SECOND)
                * Require.aboveZero("over", airing.get().over(), Unit.SECOND);
        return -StrictMath.expm1(-changes) / changes;
    }

    private static Quantity shareOf(double fraction, Quantity limit) {
        double percent = 100 * fraction;
        return Quantity.between(percent / limit.highIn(Unit.PERCENT_BY_VOLUME) * 100,
                percent / limit.in(Unit.PERCENT_BY_VOLUME) * 100,
                percent / limit.lowIn(Unit.PERCENT_BY_VOLUME) * 100, Unit.PERCENT);
    }
}
