package org.benchleaf.demo;

/** A straight fold across the sheet, from one point to another; {@code slope} above zero is a ridge, below a valley. */
record Fold(double x1, double y1, double x2, double y2, double slope, double softness) implements Relief {
    private static final double REACH = 28;

    @Override
    public double at(double x, double y) {
        double d = distance(x, y);
        double rounded = StrictMath.sqrt(d * d + softness * softness);
        return -slope * rounded * Curve.fall(rounded, REACH);
    }

    /** Gives the distance from the fold, below zero on its left-hand side. */
    double distance(double x, double y) {
        double dx = x2 - x1;
        double dy = y2 - y1;
        return ((x - x1) * dy - (y - y1) * dx) / StrictMath.sqrt(dx * dx + dy * dy);
    }

    /** Gives the worn, dirty line that a fold leaves in the surface. */
    Coat wear(Noise noise, double width, double depth, Rgb dirt) {
        return (x, y, below) -> {
            double d = Math.abs(distance(x, y) + 0.25 * noise.at(x, y, 4));
            double patchy = 0.65 + 0.35 * noise.layered(x, y, 9, 3);
            return below.stained(dirt, depth * patchy * (Curve.bump(d, width) + 0.3 * Curve.bump(d, width * 5)));
        };
    }

    /** Gives the bare line where ink or colour has been rubbed off along the fold. */
    Coat rubbed(Noise noise, double width, double share, Rgb bare) {
        return (x, y, below) -> {
            double d = Math.abs(distance(x, y));
            double broken = Curve.rise(-0.2, 0.5, noise.layered(x, y, 2.2, 3));
            return below.towards(bare, share * broken * Curve.bump(d, width));
        };
    }
}
