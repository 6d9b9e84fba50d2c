package org.benchleaf.demo;

/** The few shapes of rise and fall that edges, stains and shadows share. */
final class Curve {
    private Curve() {
    }

    static double hold(double v) {
        return v < 0 ? 0 : v > 1 ? 1 : v;
    }

    /** Gives 0 before {@code from}, 1 after {@code to}, and a smooth rise between. */
    static double rise(double from, double to, double v) {
        double t = hold((v - from) / (to - from));
        return t * t * (3 - 2 * t);
    }

    /** Gives 1 at zero and falls off, to about a third at {@code reach}. */
    static double fall(double distance, double reach) {
        return distance <= 0 ? 1 : StrictMath.exp(-distance / reach);
    }

    /** Gives a soft bump: 1 at zero, about a third at {@code reach} on both sides. */
    static double bump(double distance, double reach) {
        double t = distance / reach;
        return t > 4 || t < -4 ? 0 : StrictMath.exp(-t * t);
    }
}
