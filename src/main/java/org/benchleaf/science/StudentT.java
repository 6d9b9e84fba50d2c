package org.benchleaf.science;

import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Student's t distribution, worked out and not looked up. */
public final class StudentT {

    private static final double[] LANCZOS = {
        0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
        12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7
    };
    private static final int MOST_TERMS = 20_000;
    private static final double TINY = 1e-300;

    private StudentT() {
    }

    /**
     * Works out how likely a t at least this far from zero is, on either side, if nothing changed.
     *
     * <p>Formula: p = I(ν/2, ½; ν / (ν + t²)), I the regularised incomplete beta function.
     *
     * <p>Units: plain numbers.
     *
     * <p>Range: ν above 0 to a million.
     *
     * <p>Source: Abramowitz and Stegun (1964), 26.7.1; continued fraction 26.5.8, summed after Lentz.
     *
     * @throws OutsideRange if ν lies outside the range
     * @throws NoConvergence if the continued fraction does not settle
     */
    public static Quantity twoSided(Quantity t, Quantity degrees) {
        double freedom = freedom(degrees);
        return Quantity.number(twoSidedAt(t.in(Unit.NONE), freedom));
    }

    /**
     * Works out the t that leaves a share of the distribution above it.
     *
     * <p>Formula: the t at which half of {@link #twoSided} equals the share.
     *
     * <p>Units: plain numbers; the share as 0.025 for the upper end of a 95 % interval.
     *
     * <p>Range: share from 1e-6 to 0.5; ν above 0 to a million.
     *
     * <p>Source: as {@link #twoSided}, solved by Brent's method.
     *
     * @throws OutsideRange if a value lies outside its range
     * @throws NoConvergence if the solver finds no t
     */
    public static Quantity upperPoint(Quantity share, Quantity degrees) {
        double freedom = freedom(degrees);
        double tail = Require.within("share", share, 1e-6, 0.5, Unit.NONE, "half of a distribution lies above its middle");
        return Quantity.number(upperPointAt(tail, freedom));
    }

    static double twoSidedAt(double t, double degrees) {
        return Double.isInfinite(t) ? 0 : incompleteBeta(degrees / 2, 0.5, degrees, t * t);
    }

    static double upperPointAt(double tail, double degrees) {
        double high = 2;
        while (twoSidedAt(high, degrees) > 2 * tail) {
            high *= 2;
        }
        return Roots.between("the t of " + degrees + " degrees", t -> twoSidedAt(t, degrees) - 2 * tail, 0, high, 1e-13);
    }

    private static double freedom(Quantity degrees) {
        double freedom = Require.aboveZero("degrees", degrees, Unit.NONE);
        return Require.within("degrees", Quantity.number(freedom), 0, 1e6, Unit.NONE, "degrees of freedom");
    }

    /** I(a, b; v / (v + s)); both x and 1 − x come from v and s, so that neither loses digits near 0 or 1. */
    private static double incompleteBeta(double a, double b, double v, double s) {
        double x = v / (v + s);
        double rest = s / (v + s);
        if (rest == 0) {
            return 1;
        }
        double front = StrictMath.exp(logGamma(a + b) - logGamma(a) - logGamma(b)
                + a * StrictMath.log(x) + b * StrictMath.log(rest));
        return x < (a + 1) / (a + b + 2) ? front * continuedFraction(a, b, x) / a
                : 1 - front * continuedFraction(b, a, rest) / b;
    }

    private static double continuedFraction(double a, double b, double x) {
        double c = 1;
        double d = inverse(1 - (a + b) * x / (a + 1));
        double value = d;
        for (int m = 1; m < MOST_TERMS; m++) {
            double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
            d = inverse(1 + even * d);
            c = notZero(1 + even / c);
            value *= d * c;
            double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
            d = inverse(1 + odd * d);
            c = notZero(1 + odd / c);
            value *= d * c;
            if (Math.abs(d * c - 1) < 1e-15) {
                return value;
            }
        }
        throw new NoConvergence("the incomplete beta function did not settle in " + MOST_TERMS + " terms");
    }

    private static double inverse(double denominator) {
        return 1 / notZero(denominator);
    }

    private static double notZero(double number) {
        return Math.abs(number) < TINY ? TINY : number;
    }

    /** Lanczos (1964), SIAM J. Numer. Anal. B 1, 86, with nine coefficients and g = 7. */
    private static double logGamma(double z) {
        if (z < 0.5) {
            return StrictMath.log(Math.PI / StrictMath.sin(Math.PI * z)) - logGamma(1 - z);
        }
        double x = z - 1;
        double sum = LANCZOS[0];
        for (int k = 1; k < LANCZOS.length; k++) {
            sum += LANCZOS[k] / (x + k);
        }
        double t = x + 7.5;
        return 0.5 * StrictMath.log(2 * Math.PI) + (x + 0.5) * StrictMath.log(t) - t + StrictMath.log(sum);
    }
}
