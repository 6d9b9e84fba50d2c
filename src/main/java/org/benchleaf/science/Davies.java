package org.benchleaf.science;

import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** How much less active ions are in company: the Davies equation. */
public final class Davies {

    static final double STRONGEST = 0.5;
    private static final int MOST_ROUNDS = 200;
    /** The roots that a round solves for are found to 10⁻¹² of a pH, 2·10⁻¹² of an activity; a closer wish might never be met. */
    private static final double SETTLED = 1e-11;

    /** The ionic strength that follows from an assumed one. */
    interface Round {
        double ionicStrength(Davies activities);
    }

    private final double single;
    private final double twofold;
    private final double ionicStrength;

    private Davies(double ionicStrength, double single, double twofold) {
        this.ionicStrength = ionicStrength;
        this.single = single;
        this.twofold = twofold;
    }

    /**
     * Works out the Debye-Hückel slope A of water.
     *
     * <p>Formula: A = 1.82483·10⁶ √ρ / (ε T)¹·⁵, ρ in g/cm³, ε = 87.740 − 0.40008 t + 9.398·10⁻⁴ t² − 1.410·10⁻⁶ t³.
     *
     * <p>Units: °C in, (kg/mol)^½ out.
     *
     * <p>Range: 0 to 50 °C; the density of water is continued a little above its stated 40 °C.
     *
     * <p>Source: Davies (1962), Ion Association; permittivity of Malmberg and Maryott (1956), J. Res. NBS 56, 1,
     * from memory; checked against the slopes of a geochemical database.
     *
     * @throws OutsideRange if the temperature lies outside the range
     */
    public static Quantity slope(Quantity temperature) {
        double t = Require.within("temperature", temperature, 0, 50, Unit.CELSIUS,
                "range of the permittivity of water used");
        return Quantity.number(slopeAt(t));
    }

    /** Repeats a round until the ionic strength that comes out is the one that went in. */
    static Davies settled(String what, double celsius, Round round) {
        double slope = slopeAt(celsius);
        Davies activities = at(0, slope);
        for (int count = 0; count < MOST_ROUNDS; count++) {
            double next = round.ionicStrength(activities);
            if (!(next <= STRONGEST)) {
                throw new NoConvergence(what + " comes out stronger than the activity formula reaches, ionic strength "
                        + STRONGEST + " mol/kg");
            }
            if (Math.abs(next - activities.ionicStrength) <= SETTLED * next) {
                return at(next, slope);
            }
            activities = at(next, slope);
        }
        throw new NoConvergence(what + ": the ionic strength did not settle in " + MOST_ROUNDS + " rounds");
    }

    double single() {
        return single;
    }

    double twofold() {
        return twofold;
    }

    double ionicStrength() {
        return ionicStrength;
    }

    private static Davies at(double ionicStrength, double slope) {
        double root = Math.sqrt(ionicStrength);
        double exponent = -slope * (root / (1 + root) - 0.3 * ionicStrength);
        return new Davies(ionicStrength, StrictMath.pow(10, exponent), StrictMath.pow(10, 4 * exponent));
    }

    private static double slopeAt(double t) {
        double permittivity = 87.740 - 0.40008 * t + 9.398e-4 * t * t - 1.410e-6 * t * t * t;
        double product = permittivity * (t + Vapour.KELVIN);
        return 1.82483e6 * Math.sqrt(Water.densityAt(t) / 1000) / (product * Math.sqrt(product));
    }
}
