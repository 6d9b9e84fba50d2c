package org.benchleaf.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Mould: colonies in clusters, grey-green and furry while they are there, a pale brown stain once they are gone. */
record Mould(Noise noise, List<Colony> colonies, double growth, double stain) implements Coat {

    /** One colony: where it is, how far it has grown, how dense it is. */
    record Colony(double x, double y, double radius, double density) {
    }

    Mould {
        colonies = List.copyOf(colonies);
    }

    /** Gives colonies gathered round some centres, each centre given as x, y, spread and count. */
    static Mould clustered(int seed, double growth, double stain, double[]... centres) {
        Random chance = new Random(seed);
        List<Colony> colonies = new ArrayList<>();
        for (double[] c : centres) {
            for (int i = 0; i < c[3]; i++) {
                double size = 0.9 + 7.5 * chance.nextDouble() * chance.nextDouble() * chance.nextDouble();
                colonies.add(new Colony(c[0] + chance.nextGaussian() * c[2], c[1] + chance.nextGaussian() * c[2] * 0.7,
                        size, 0.45 + 0.55 * chance.nextDouble()));
            }
        }
        return new Mould(new Noise(seed), colonies, growth, stain);
    }

    @Override
    public Rgb over(double x, double y, Rgb below) {
        Rgb seen = below;
        for (Colony c : colonies) {
            double dx = x - c.x;
            double dy = y - c.y;
            double reach = c.radius * 2.4;
            if (dx * dx + dy * dy < reach * reach) {
                seen = colony(c, StrictMath.sqrt(dx * dx + dy * dy), x, y, seen);
            }
        }
        return seen;
    }

    private Rgb colony(Colony c, double distance, double x, double y, Rgb below) {
        double d = distance / c.radius + 0.4 * noise.layered(x + c.x, y, c.radius * 0.7, 4);
        double body = (1 - Curve.rise(0.55, 1.15, d)) * c.density;
        Rgb seen = below.stained(Rgb.of(0x9a7a52), stain * (0.8 * body + 0.4 * Curve.bump(d - 1.05, 0.25) * c.density));
        double furry = 0.5 + 0.7 * noise.layered(x, y, 0.45, 3) + 0.3 * noise.layered(x, y, 2.5, 2);
        Rgb heart = Rgb.of(0x4b5443).towards(Rgb.of(0x8b9580), Curve.hold(d));
        seen = seen.towards(heart, growth * body * Curve.hold(furry + 0.35 * (1 - d)));
        double rim = Curve.bump(d - 0.95, 0.16) * c.density * (0.4 + 0.6 * Curve.hold(furry));
        return seen.towards(Rgb.of(0xcfd2c3), growth * 0.55 * rim);
    }
}
