package org.benchleaf.demo;

/** Where the lamp stands: the direction it comes from in the picture, how low it is, and how its light falls off. */
record Light(double fromX, double fromY, double slant, double falloff, double shadow) {

    /** Even light from two sides, slightly stronger from the upper left. */
    static Light normal() {
        return new Light(-0.7, -0.7, 0.85, 0.035, 1);
    }

    /** One low lamp at the left: every ripple throws its shade. */
    static Light rakingFromLeft() {
        return new Light(-0.96, -0.28, 5.2, 0.22, 2.4);
    }

    /** Gives how bright a slope is beside a flat place, which is 1. */
    double on(double slopeX, double slopeY) {
        double v = -(slopeX * fromX + slopeY * fromY) * slant;
        double soft = v / (1 + Math.abs(v) * (v > 0 ? 1.7 : 1.1));
        return 1 + soft;
    }

    /** Gives how bright the lamp is at a place of the picture, given as shares of its width and height. */
    double at(double u, double v) {
        double away = 0.5 + 0.5 * ((u - 0.5) * -fromX + (v - 0.5) * -fromY) * 2;
        double corner = (u - 0.5) * (u - 0.5) + (v - 0.5) * (v - 0.5);
        return 1 + falloff * (0.5 - away) * 1.6 - 0.07 * corner;
    }
}
