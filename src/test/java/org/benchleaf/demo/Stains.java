package org.benchleaf.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** The stains a sheet can carry; each takes a strength, so that a treated sheet shows the same stain, fainter. */
final class Stains {
    private static final Rgb BROWN = Rgb.of(0x9c6a35);

    private Stains() {
    }

    /** Gives the brown of age creeping in from the edges. */
    static Coat edges(Outline outline, Noise noise, double reach, double strength) {
        return (x, y, below) -> {
            double d = outline.inside(x, y) * (1 + 0.5 * noise.layered(x, y, 30, 3));
            double k = Curve.fall(d, reach) * 0.7 + 0.5 * Curve.fall(d, reach / 6);
            return below.stained(BROWN, strength * k);
        };
    }

    /** Gives an even brown over the whole sheet, a little cloudy. */
    static Coat tone(Noise noise, Rgb colour, double strength) {
        return (x, y, below) -> below.stained(colour, strength * (1 + 0.22 * noise.layered(x, y, 60, 4)));
    }

    /** Gives small rust-brown spots scattered over the sheet. */
    static Coat foxing(int seed, double wide, double high, int count, double strength) {
        Random chance = new Random(seed);
        Noise noise = new Noise(seed);
        List<double[]> spots = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double size = 0.5 + 2.6 * chance.nextDouble() * chance.nextDouble();
            spots.add(new double[] {chance.nextDouble() * wide, chance.nextDouble() * high, size,
                    0.35 + 0.65 * chance.nextDouble()});
        }
        return (x, y, below) -> {
            Rgb seen = below;
            for (double[] s : spots) {
                double dx = x - s[0];
                double dy = y - s[1];
                if (dx * dx + dy * dy < s[2] * s[2] * 9) {
                    double d = StrictMath.sqrt(dx * dx + dy * dy) * (1 + 0.5 * noise.layered(x, y, 1.4, 3));
                    double k = 0.55 * Curve.bump(d, s[2]) + 0.5 * Curve.bump(d, s[2] * 0.35);
                    seen = seen.stained(Rgb.of(0xa0602c), strength * s[3] * k);
                }
            }
            return seen;
        };
    }

    /** Gives grey surface dirt in drifting smears, as deep as {@code where} says at each place. */
    static Coat grime(Noise noise, Rgb dirt, double strength, Relief where) {
        return (x, y, below) -> {
            double drift = 0.55 + 0.6 * noise.layered(x, y * 0.7, 48, 4);
            double speck = 0.85 + 0.4 * noise.layered(x, y, 1.3, 2);
            return below.stained(dirt, strength * where.at(x, y) * Math.max(0, drift) * speck);
        };
    }
}
