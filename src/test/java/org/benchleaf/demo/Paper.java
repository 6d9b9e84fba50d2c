package org.benchleaf.demo;

/** Paper itself: its tone, cloudiness, fibres and grain. */
record Paper(Rgb tone, Noise noise, double cloud, double grain, double laid) implements Coat {

    static Paper wove(Rgb tone, int seed) {
        return new Paper(tone, new Noise(seed), 0.02, 0.035, 0);
    }

    static Paper laid(Rgb tone, int seed) {
        return new Paper(tone, new Noise(seed), 0.018, 0.022, 0.014);
    }

    @Override
    public Rgb over(double x, double y, Rgb below) {
        double k = 1 + cloud * noise.layered(x, y, 45, 3);
        k += grain * 0.45 * noise.layered(x, y, 2.6, 2);
        k += grain * 0.55 * noise.layered(x, y * 0.6, 0.55, 2);
        k += grain * 0.7 * noise.ridges(x + 3 * noise.at(x, y, 7), y * 0.45, 2.2);
        k -= grain * 0.6 * noise.ridges(y * 0.5 + 400, x + 2 * noise.at(y, x, 6), 1.7);
        k += laid == 0 ? 0 : laid * laidLines(x, y);
        double warm = 0.012 * noise.layered(x + 900, y, 22, 2);
        return new Rgb(tone.r() * (k + warm), tone.g() * k, tone.b() * (k - warm * 1.6));
    }

    private double laidLines(double x, double y) {
        double wires = StrictMath.sin(2 * Math.PI * (y + 0.2 * noise.at(x, y, 60)) / 1.15);
        double phase = x / 25.4 - Math.floor(x / 25.4) - 0.5;
        return wires * 0.8 - 2.2 * Curve.bump(phase * 25.4, 0.5);
    }
}
