package org.benchleaf.demo;

/** Blue that light has made in the paper, with the drawing left white; {@code faded} says where it has gone pale. */
record Cyanotype(Noise noise, Rgb blue, Mask halo, Mask lines, Relief faded) implements Coat {
    private static final Rgb PALE = Rgb.of(0xa9b7b4);

    @Override
    public Rgb over(double x, double y, Rgb below) {
        double washed = 0.07 * noise.layered(x * 0.25, y, 26, 3) + 0.05 * noise.layered(x, y, 2.2, 2);
        double grain = below.g() / 0.87;
        Rgb coated = blue.times((1 + washed) * (0.6 + 0.4 * grain)).towards(PALE.times(grain), faded.at(x, y));
        double line = Math.max(lines.at(x, y), 0.6 * halo.at(x, y)) * (0.86 + 0.16 * noise.layered(x, y, 5, 2));
        return coated.towards(below.towards(coated, 0.1), line);
    }
}
