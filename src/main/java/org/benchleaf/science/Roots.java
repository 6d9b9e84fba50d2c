package org.benchleaf.science;

/** Finds where a function crosses zero between two ends, in a limited number of steps. */
final class Roots {

    private static final int MOST_STEPS = 200;

    /** A function of one number. */
    interface Function {
        double at(double x);
    }

    private Roots() {
    }

    /**
     * Gives the crossing between two ends at which the function has opposite signs.
     *
     * <p>Brent's method: inverse quadratic or secant steps, and a halving wherever they would leave the bracket, so
     * the bracket always shrinks and the search always ends.
     *
     * <p>Source: R. P. Brent (1973), Algorithms for Minimization without Derivatives, chapter 4.
     *
     * @throws NoConvergence if the ends have the same sign, or the limit of steps is reached
     */
    static double between(String what, Function f, double low, double high, double tolerance) {
        double a = low;
        double b = high;
        double fa = f.at(a);
        double fb = f.at(b);
        if (!(fa * fb <= 0)) {
            throw new NoConvergence(what + " has no solution between " + low + " and " + high);
        }
        double c = a;
        double fc = fa;
        double step = b - a;
        double before = step;
        for (int count = 0; count < MOST_STEPS; count++) {
            if (Math.abs(fc) < Math.abs(fb)) {
                a = b;
                b = c;
                c = a;
                fa = fb;
                fb = fc;
                fc = fa;
            }
            double near = 2e-16 * Math.abs(b) + tolerance / 2;
            double half = (c - b) / 2;
            if (Math.abs(half) <= near || fb == 0) {
                return b;
            }
            double[] steps = nextSteps(a, b, c, fa, fb, fc, step, before, near);
            before = steps[0];
            step = steps[1];
            a = b;
            fa = fb;
            b += Math.abs(step) > near ? step : Math.copySign(near, half);
            fb = f.at(b);
            if (fb > 0 == fc > 0) {
                c = a;
                fc = fa;
                step = b - a;
                before = step;
            }
        }
        throw new NoConvergence(what + " was not found in " + MOST_STEPS + " steps");
    }

    /** The step before and the step to take: interpolated where that is safe, half the bracket elsewhere. */
    private static double[] nextSteps(double a, double b, double c, double fa, double fb, double fc, double step,
            double before, double near) {
        double half = (c - b) / 2;
        if (Math.abs(before) < near || Math.abs(fa) <= Math.abs(fb)) {
            return new double[] {half, half};
        }
        double s = fb / fa;
        double p;
        double q;
        if (a == c) {
            p = 2 * half * s;
            q = 1 - s;
        } else {
            double r = fb / fc;
            double t = fa / fc;
            p = s * (2 * half * t * (t - r) - (b - a) * (r - 1));
            q = (t - 1) * (r - 1) * (s - 1);
        }
        if (p > 0) {
            q = -q;
        }
        p = Math.abs(p);
        boolean safe = 2 * p < Math.min(3 * half * q - Math.abs(near * q), Math.abs(before * q));
        return safe ? new double[] {step, p / q} : new double[] {half, half};
    }
}
