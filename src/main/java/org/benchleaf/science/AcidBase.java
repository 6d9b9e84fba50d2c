package org.benchleaf.science;

import java.util.List;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * The pH of acids, bases and their salts in water free of carbon dioxide, at 25 °C, solved as an equilibrium.
 *
 * <p>Unknown is the pH; the charges balance at one pH only. Activities after Davies are repeated until the ionic strength
 * settles; above the strength that the Davies equation reaches, they are held at those of its end.
 */
public final class AcidBase {

    private static final double CELSIUS = 25;
    private static final double LOWEST_PH = -2;
    private static final double HIGHEST_PH = 16.5;
    private static final double TOLERANCE = 1e-10;
    /** How far the model lies from pH standards. */
    private static final double SPREAD = 0.05;
    /** How far handbooks lie above it where ions of more than one charge pair up, as in sodium carbonate. */
    private static final double PAIRED = 0.35;

    /**
     * One substance dissolved.
     *
     * @param molality mol per kilogram of water
     * @param strong charge that its ions bring which take no part: positive for sodium and the like, negative for chloride
     *     and the like, so +1 for sodium hydroxide, −1 for hydrogen chloride, +2 for disodium salts
     * @param constants pK of its protons, the first given off first; empty for strong acids and bases
     * @param bare charge of what is left when every proton is gone, such as −2 for carbonate and 0 for ammonia
     */
    public record Dissolved(double molality, int strong, List<Double> constants, int bare) {
        public Dissolved {
            constants = List.copyOf(constants);
        }
    }

    private AcidBase() {
    }

    /**
     * Works out the pH.
     *
     * <p>Formula: Σ z c = 0 over H⁺, OH⁻, the strong ions and every form HᵢA of each weak acid, whose shares follow from
     * K = a(H⁺) γ(A) c(A) / (γ(HA) c(HA)); log γ = −A z² (√I / (1 + √I) − 0.3 I).
     *
     * <p>Units: mol/kg in, pH out, with its spread.
     *
     * <p>Range: 25 °C; activities hold to an ionic strength of 0.5 mol/kg and are an estimate above it.
     *
     * <p>Source: Davies (1962), Ion Association; Butler (1998), Ionic Equilibrium, chapters 4 and 5.
     *
     * @throws OutsideRange if an amount is negative
     */
    public static Quantity ph(List<Dissolved> dissolved) {
        for (Dissolved one : dissolved) {
            if (!(one.molality() >= 0)) {
                throw new OutsideRange("molality", Clause.value(one.molality() + " mol/kg"), Clause.of("0 and more"),
                        "an amount of substance");
            }
        }
        Davies ions = Davies.settled("the solution", CELSIUS,
                assumed -> Math.min(Davies.STRONGEST, ionicStrength(dissolved, solved(dissolved, assumed), assumed)));
        double ph = solved(dissolved, ions);
        boolean paired = dissolved.stream().anyMatch(one -> one.strong() > 0 && one.constants().size() > 1);
        return Quantity.between(ph - SPREAD, ph, ph + (paired ? PAIRED : SPREAD), Unit.PH);
    }

    private static double solved(List<Dissolved> dissolved, Davies ions) {
        return Roots.between("the pH of the solution", ph -> charge(dissolved, ph, ions), LOWEST_PH, HIGHEST_PH, TOLERANCE);
    }

    private static double charge(List<Dissolved> dissolved, double ph, Davies ions) {
        double h = StrictMath.pow(10, -ph);
        double sum = (h - water() / h) / ions.single();
        for (Dissolved one : dissolved) {
            double[] shares = shares(one, h, ions);
            double charge = one.strong();
            for (int protons = 0; protons < shares.length; protons++) {
                charge += shares[protons] * (one.bare() + protons);
            }
            // A strong acid or base has no form of its own: its hydrogen or hydroxide is in the water's.
            sum += one.molality() * (one.constants().isEmpty() ? one.strong() : charge);
        }
        return sum;
    }

    private static double ionicStrength(List<Dissolved> dissolved, double ph, Davies ions) {
        double h = StrictMath.pow(10, -ph);
        double sum = (h + water() / h) / ions.single();
        for (Dissolved one : dissolved) {
            double[] shares = shares(one, h, ions);
            double squares = Math.abs(one.strong());
            for (int protons = 0; !one.constants().isEmpty() && protons < shares.length; protons++) {
                squares += shares[protons] * (one.bare() + protons) * (one.bare() + protons);
            }
            sum += one.molality() * squares;
        }
        return sum / 2;
    }

    /** The share of each form, by how many protons it holds. */
    private static double[] shares(Dissolved one, double h, Davies ions) {
        int all = one.constants().size();
        double[] shares = new double[all + 1];
        shares[0] = 1;
        double sum = 1;
        for (int protons = 1; protons <= all; protons++) {
            double constant = StrictMath.pow(10, -one.constants().get(all - protons));
            shares[protons] = shares[protons - 1] * h / constant
                    * gamma(one.bare() + protons - 1, ions) / gamma(one.bare() + protons, ions);
            sum += shares[protons];
        }
        for (int protons = 0; protons <= all; protons++) {
            shares[protons] /= sum;
        }
        return shares;
    }

    private static double gamma(int charge, Davies ions) {
        return StrictMath.pow(ions.single(), charge * charge);
    }

    private static double water() {
        return Equilibrium.WATER.at(CELSIUS + Vapour.KELVIN);
    }
}
