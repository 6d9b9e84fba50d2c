package org.benchleaf.demo;

import java.awt.Color;

/** A colour in sRGB, each part from 0 to 1. */
record Rgb(double r, double g, double b) {
    static final Rgb WHITE = new Rgb(1, 1, 1);

    static Rgb of(int hex) {
        return new Rgb((hex >> 16 & 255) / 255.0, (hex >> 8 & 255) / 255.0, (hex & 255) / 255.0);
    }

    static Rgb grey(double v) {
        return new Rgb(v, v, v);
    }

    /** Gives the colour part of the way towards another; the share is held between 0 and 1. */
    Rgb towards(Rgb other, double share) {
        double t = Curve.hold(share);
        return new Rgb(r + (other.r - r) * t, g + (other.g - g) * t, b + (other.b - b) * t);
    }

    Rgb times(double k) {
        return new Rgb(r * k, g * k, b * k);
    }

    /** Gives this colour seen through a transparent stain of another colour, as deep as {@code depth} says. */
    Rgb stained(Rgb stain, double depth) {
        double t = Math.max(0, depth);
        return new Rgb(r * Math.max(0, 1 - t * (1 - stain.r)), g * Math.max(0, 1 - t * (1 - stain.g)),
                b * Math.max(0, 1 - t * (1 - stain.b)));
    }

    int packed() {
        return channel(r) << 16 | channel(g) << 8 | channel(b);
    }

    Color color() {
        return new Color(packed());
    }

    private static int channel(double v) {
        return (int) (Curve.hold(v) * 255 + 0.5);
    }
}
