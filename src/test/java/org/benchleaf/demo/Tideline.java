package org.benchleaf.demo;

/**
 * The mark left where a wetted part of the sheet once met the dry part: a pale field with a dark, wandering rim.
 *
 * <p>The rim runs from {@code leftY} at the left edge to {@code rightY} at x = {@code wide}; water stood below it.
 */
record Tideline(Noise noise, double wide, double leftY, double rightY, double wander, double strength) implements Coat {
    private static final Rgb RIM = Rgb.of(0x7a4a1e);
    private static final Rgb FIELD = Rgb.of(0xb58a52);

    Tideline faded(double share) {
        return new Tideline(noise, wide, leftY, rightY, wander, strength * share);
    }

    @Override
    public Rgb over(double x, double y, Rgb below) {
        double depth = depth(x, y);
        double first = rim(depth, 1, 5);
        double second = 0.45 * rim(depth - 8 - 5 * noise.layered(x, y, 33, 2), 0.8, 3.5);
        double third = 0.3 * rim(depth - 21 - 9 * noise.layered(y, x, 41, 2), 0.7, 3);
        double field = 0.3 * Curve.rise(0, 10, depth) * (1 + 0.5 * noise.layered(x, y, 25, 3));
        double patchy = 0.8 + 0.35 * noise.layered(x, y, 14, 3);
        return below.stained(FIELD, strength * field).stained(RIM, strength * 0.62 * patchy * (first + second + third));
    }

    /** Gives how far below the rim a point lies, in millimetres; below zero on the dry side. */
    double depth(double x, double y) {
        double rim = leftY + (rightY - leftY) * x / wide;
        double slow = wander * noise.layered(x, 0.3 * y, 70, 3);
        double fine = 1.6 * noise.layered(x, y, 6, 3);
        return y - rim - slow - fine;
    }

    double rimAt(double x) {
        double y = leftY + (rightY - leftY) * x / wide;
        for (int i = 0; i < 12; i++) {
            y -= depth(x, y) * 0.8;
        }
        return y;
    }

    private static double rim(double depth, double outer, double inner) {
        return depth < 0 ? Curve.bump(depth, outer) : 0.75 * Curve.fall(depth, inner) + 0.25 * Curve.bump(depth, outer);
    }
}
