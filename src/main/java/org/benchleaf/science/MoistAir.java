package org.benchleaf.science;

import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Moist air: dew point, the water it holds, and the humidity over salts. */
public final class MoistAir {

    private static final String MAGNUS_SOURCE = "Sonntag (1990), Magnus formula over water";
    private static final double SCALE = 611.2;
    private static final double SLOPE = 17.62;
    private static final double OFFSET = 243.12;
    /** Gas constant of water vapour, J/(kg K). */
    private static final double VAPOUR_CONSTANT = 461.5;

    /**
     * The water in air.
     *
     * @param dewPoint the temperature at which it begins to condense
     * @param absoluteHumidity its mass in a volume
     * @param vapourPressure its pressure
     */
    public record State(Quantity dewPoint, Quantity absoluteHumidity, Quantity vapourPressure) {
    }

    private MoistAir() {
    }

    /**
     * Works out dew point, water content and vapour pressure of air.
     *
     * <p>Formula: e = RH · 611.2 Pa · exp(17.62 t / (243.12 + t)); td = 243.12 g / (17.62 − g), g = ln RH +
     * 17.62 t / (243.12 + t); water = e / (461.5 T).
     *
     * <p>Units: °C and % RH in; °C, g/m³ and Pa out.
     *
     * <p>Range: −45 to 60 °C; above 0 to 100 % RH.
     *
     * <p>Source: Sonntag (1990), Z. Meteorol. 70, 340, Magnus formula over water.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static State state(Quantity temperature, Quantity humidity) {
        double t = celsius(temperature);
        double share = share("humidity", humidity);
        double pressure = share * saturation(t);
        double g = StrictMath.log(share) + SLOPE * t / (OFFSET + t);
        return new State(Quantity.of(OFFSET * g / (SLOPE - g), Unit.CELSIUS),
                Quantity.of(grams(pressure, t), Unit.GRAM_PER_CUBIC_METRE), Quantity.of(pressure, Unit.PASCAL));
    }

    /**
     * Works out the water that raises the humidity of a closed volume of air.
     *
     * <p>Formula: (RH₂ − RH₁) e(t) / (461.5 T) · V.
     *
     * <p>Units: volume, °C, % RH; result in g. Of the air only: paper, blotter and walls take up far more.
     *
     * <p>Range: volume above 0; −45 to 60 °C; above 0 to 100 % RH, the second not below the first.
     *
     * <p>Source: Sonntag (1990), Z. Meteorol. 70, 340; ideal gas.
     *
     * @throws OutsideRange if the humidity would fall, or a value lies outside its range
     */
    public static Quantity humidifying(Quantity volume, Quantity temperature, Quantity from, Quantity to) {
        double t = celsius(temperature);
        double start = share("from", from);
        double end = share("to", to);
        if (end < start) {
            throw new OutsideRange("to", Clause.value(to.in(Unit.PERCENT_HUMIDITY) + " % RH"),
                    Clause.of("{start} or more, where it starts", "start", from.in(Unit.PERCENT_HUMIDITY) + " % RH"),
                    "water can only raise the humidity");
        }
        return Quantity.of(Require.aboveZero("volume", volume, Unit.CUBIC_METRE) * grams((end - start) * saturation(t), t),
                Unit.GRAM);
    }

    private static double saturation(double t) {
        return SCALE * StrictMath.exp(SLOPE * t / (OFFSET + t));
    }

    private static double grams(double pressure, double t) {
        return 1000 * pressure / (VAPOUR_CONSTANT * (t + Vapour.KELVIN));
    }

    private static double celsius(Quantity temperature) {
        return Require.within("temperature", temperature, -45, 60, Unit.CELSIUS, MAGNUS_SOURCE);
    }

    private static double share(String input, Quantity humidity) {
        return Require.within(input, humidity, 0.1, 100, Unit.PERCENT_HUMIDITY,
                "relative humidity; the dew point has no value in air without water") / 100;
    }
}
