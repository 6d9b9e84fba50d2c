package org.benchleaf.science;

import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Models of how paper ages. They compare climates; they do not forecast. */
public final class Ageing {

    private static final double GAS_CONSTANT = 8.314462618;
    private static final double REFERENCE_KELVIN = 293.15;
    private static final String MODEL = "the model compares room climates";

    private Ageing() {
    }

    /**
     * Works out how many times longer a material lasts than at 20 °C and 50 % RH.
     *
     * <p>Formula: (50 / RH)¹·³ · exp(E / R · (1/T − 1/293.15)).
     *
     * <p>Units: °C, % RH, kJ/mol; a plain number out.
     *
     * <p>Range: −20 to 60 °C; 5 to 95 % RH; 50 to 150 kJ/mol.
     *
     * <p>Source: Michalski (2002), Double the life for each five-degree drop, ICOM-CC 13th triennial meeting, 66-72,
     * as restated in open documentation (with kJ where that prints J).
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Quantity multiplier(Quantity temperature, Quantity humidity, Quantity energy) {
        double kelvin = Vapour.KELVIN + Require.within("temperature", temperature, -20, 60, Unit.CELSIUS, MODEL);
        double percent = Require.within("humidity", humidity, 5, 95, Unit.PERCENT_HUMIDITY, MODEL);
        double joules = 1000 * Require.within("energy", energy, 50, 150, Unit.KILOJOULE_PER_MOLE,
                "activation energies quoted for paper and varnish");
        return Quantity.number(StrictMath.pow(50 / percent, 1.3)
                * StrictMath.exp(joules / GAS_CONSTANT * (1 / kelvin - 1 / REFERENCE_KELVIN)));
    }

    /**
     * Works out the degree of polymerisation after a time.
     *
     * <p>Formula: 1 / DP = 1 / DP₀ + k t.
     *
     * <p>Units: plain numbers; k per year, t in any unit of time.
     *
     * <p>Range: DP₀ above 0; k and t 0 or more.
     *
     * <p>Source: Ekenstam (1936), form from memory; named in Ding and Wang (2008), Cellulose 15.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Quantity polymerisation(Quantity start, Quantity ratePerYear, Quantity time) {
        double rate = Require.atLeastZero("rate", ratePerYear, Unit.NONE);
        double years = Require.atLeastZero("time", time, Unit.YEAR);
        return Quantity.number(1 / (1 / Require.aboveZero("start", start, Unit.NONE) + rate * years));
    }

    /**
     * Works out how the permanence of paper in one climate compares with that in another.
     *
     * <p>Formula: P₂/P₁ = (RH₁/RH₂) (T₁/T₂) exp(ΔH/R (1/T₂ − 1/T₁)).
     *
     * <p>Units: °C, % RH, kJ/mol; a plain number out.
     *
     * <p>Range: temperatures above −50 °C, humidities above 0.
     *
     * <p>Source: Sebera (1994), Isoperms, Commission on Preservation and Access; closed form from memory.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Quantity isoperm(Quantity firstTemperature, Quantity firstHumidity, Quantity secondTemperature,
            Quantity secondHumidity, Quantity enthalpy) {
        double t1 = Vapour.KELVIN + Require.within("first-temperature", firstTemperature, -50, 100, Unit.CELSIUS, MODEL);
        double t2 = Vapour.KELVIN
                + Require.within("second-temperature", secondTemperature, -50, 100, Unit.CELSIUS, MODEL);
        double humidities = Require.aboveZero("first-humidity", firstHumidity, Unit.PERCENT_HUMIDITY)
                / Require.aboveZero("second-humidity", secondHumidity, Unit.PERCENT_HUMIDITY);
        double exponent = 1000 * enthalpy.in(Unit.KILOJOULE_PER_MOLE) / GAS_CONSTANT * (1 / t2 - 1 / t1);
        return Quantity.number(humidities * t1 / t2 * StrictMath.exp(exponent));
    }

    /**
     * Works out the preservation index of a climate.
     *
     * <p>Formula: 1 / (RH · 5.9·10¹² · exp(−90300 / (8.314 T))), RH in %.
     *
     * <p>Units: °C, % RH; years out. Fitted to acetate film, not to paper.
     *
     * <p>Range: −20 to 60 °C; 5 to 95 % RH.
     *
     * <p>Source: Reilly, Nishimura and Zinn (1995), New Tools for Preservation, as restated in open documentation.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Quantity preservationIndex(Quantity temperature, Quantity humidity) {
        double kelvin = Vapour.KELVIN + Require.within("temperature", temperature, -20, 60, Unit.CELSIUS, MODEL);
        double percent = Require.within("humidity", humidity, 5, 95, Unit.PERCENT_HUMIDITY, MODEL);
        return Quantity.of(1 / (percent * 5.9e12 * StrictMath.exp(-90_300 / (8.314 * kelvin))), Unit.YEAR);
    }
}
