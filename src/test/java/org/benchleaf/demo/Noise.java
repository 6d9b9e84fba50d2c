package org.benchleaf.demo;

/** Smooth chance that is the same on every machine: value noise between -1 and 1, seeded. */
final class Noise {
    private final int seed;

    Noise(int seed) {
        this.seed = seed;
    }

    /** Gives the noise at a point, with one bump about every {@code size} millimetres. */
    double at(double x, double y, double size) {
        return at(x / size, y / size);
    }

    /** Gives noise with finer and finer bumps laid over the first ones, each half as strong. */
    double layered(double x, double y, double size, int octaves) {
        double sum = 0;
        double weight = 0.5;
        double total = 0;
        double u = x / size;
        double v = y / size;
        for (int i = 0; i < octaves; i++) {
            sum += weight * at(u, v);
            total += weight;
            weight /= 2;
            u = u * 2.03 + 17.7;
            v = v * 2.03 - 9.2;
        }
        return sum / total;
    }

    /** Gives narrow bright ridges from 0 to 1, such as fibres make. */
    double ridges(double x, double y, double size) {
        double n = Math.abs(layered(x, y, size, 2));
        double ridge = Math.max(0, 1 - n * 6);
        return ridge * ridge;
    }

    private double at(double u, double v) {
        int iu = (int) Math.floor(u);
        int iv = (int) Math.floor(v);
        double fu = ease(u - iu);
        double fv = ease(v - iv);
        double top = mix(corner(iu, iv), corner(iu + 1, iv), fu);
        double foot = mix(corner(iu, iv + 1), corner(iu + 1, iv + 1), fu);
        return mix(top, foot, fv);
    }

    private double corner(int x, int y) {
        int h = seed * 0x27d4eb2d + x * 0x165667b1 + y * 0x9e3779b1;
        h = (h ^ (h >>> 15)) * 0x85ebca6b;
        h = (h ^ (h >>> 13)) * 0xc2b2ae35;
        h ^= h >>> 16;
        return h / 2147483648.0;
    }

    private static double ease(double t) {
        return t * t * t * (t * (t * 6 - 15) + 10);
    }

    private static double mix(double a, double b, double t) {
        return a + (b - a) * t;
    }
}
