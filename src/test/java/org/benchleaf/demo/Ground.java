package org.benchleaf.demo;

/** What the sheet lies on. */
@FunctionalInterface
interface Ground {
    /** Gives the colour at a point, in the same millimetres as the sheet. */
    Rgb at(double x, double y);

    /** Gives the neutral grey of a copy stand. */
    static Ground grey(int seed) {
        Noise noise = new Noise(seed);
        return (x, y) -> Rgb.grey(0.5 + 0.012 * noise.layered(x, y, 90, 3) + 0.01 * noise.layered(x, y, 1.2, 2));
    }
}
