package org.benchleaf.demo;

/** Ink on the sheet: where it lies, its colour, how dense and how even it is. */
record Ink(Mask mask, Rgb colour, double density, double unevenness, Noise noise) implements Coat {

    /** Printed ink: dense, a little starved in places. */
    static Ink printed(Mask mask, Rgb colour, int seed) {
        return new Ink(mask, colour, 0.9, 0.16, new Noise(seed));
    }

    @Override
    public Rgb over(double x, double y, Rgb below) {
        double cover = mask.at(x, y);
        if (cover <= 0.003) {
            return below;
        }
        double even = 1 - unevenness * (0.5 + 0.6 * noise.layered(x, y, 7, 2) + 0.6 * noise.layered(x, y, 0.7, 2));
        Rgb through = new Rgb(colour.r() * (0.6 + 0.4 * below.r()), colour.g() * (0.6 + 0.4 * below.g()),
                colour.b() * (0.6 + 0.4 * below.b()));
        return below.towards(through, cover * density * even);
    }
}
