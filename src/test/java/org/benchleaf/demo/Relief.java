package org.benchleaf.demo;

/** The height of the sheet over a flat table, in millimetres; light and shade are worked out from it. */
@FunctionalInterface
interface Relief {
    double at(double x, double y);

    /** Gives the ripples that uneven moisture leaves, stronger towards the side where {@code wet} is 1. */
    static Relief cockling(Noise noise, double height, double size, Relief wet) {
        return (x, y) -> height * wet.at(x, y)
                * (noise.layered(x + 14 * noise.at(x, y, 90), y * 0.3, size * 0.62, 2) + 0.6 * noise.at(x, y, size * 1.8));
    }

    /** Gives the faint tooth of the paper surface. */
    static Relief tooth(Noise noise, double height) {
        return (x, y) -> height * noise.layered(x, y, 1.1, 2);
    }
}
