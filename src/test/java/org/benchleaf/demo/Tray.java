package org.benchleaf.demo;

/** A white tray on the bench, in millimetres of the sheet that lies in it, with a carrier sheet on its floor. */
record Tray(double x, double y, double wide, double high, double wall, Outline carrier, Ground bench, Noise noise)
        implements Ground {

    @Override
    public Rgb at(double px, double py) {
        double d = depth(px, py);
        if (d < -wall) {
            return bench.at(px, py).times(1 - 0.4 * Curve.fall(-wall - d, wall * 0.45));
        }
        if (d < 0) {
            Rgb outside = bench.at(px, py).times(0.6);
            return outside.towards(rim(px, py, -d / wall), Curve.rise(-wall, -wall + 1, d));
        }
        double corner = 0.16 * Curve.fall(d, wall * 0.9);
        double side = lit(px, py) * 0.06 * Curve.fall(d, wall * 1.6);
        Rgb floor = Rgb.of(0xdcdedb).times(1 - corner + side + 0.008 * noise.layered(px, py, 40, 3));
        return onCarrier(px, py, floor);
    }

    /** Gives how far inside the tray a point lies. */
    double depth(double px, double py) {
        double r = wall * 1.6;
        double cx = Math.max(0, Math.abs(px - x - wide / 2) - wide / 2 + r);
        double cy = Math.max(0, Math.abs(py - y - high / 2) - high / 2 + r);
        double straight = Math.min(wide / 2 - Math.abs(px - x - wide / 2), high / 2 - Math.abs(py - y - high / 2));
        return cx > 0 && cy > 0 ? r - StrictMath.hypot(cx, cy) : straight;
    }

    private Rgb rim(double px, double py, double out) {
        double round = 0.88 + 0.16 * Curve.bump(out - 0.35, 0.35) - 0.22 * Curve.rise(0.6, 1, out);
        return Rgb.of(0xe9eae7).times(round - 0.1 * lit(px, py) * (0.3 - out));
    }

    /** 1 on the side of the tray that faces the lamp, -1 on the other. */
    private double lit(double px, double py) {
        double u = (px - x) / wide - 0.5;
        double v = (py - y) / high - 0.5;
        return Math.max(-1, Math.min(1, 1.2 * (u + v)));
    }

    private Rgb onCarrier(double px, double py, Rgb floor) {
        double d = carrier.inside(px, py);
        if (d < -6) {
            return floor;
        }
        double weave = 0.03 * noise.layered(px, py, 1.4, 2) + 0.02 * noise.ridges(px, py, 3);
        Rgb web = Rgb.of(0xf1f0ea).times(0.98 + weave);
        double shade = 0.1 * Curve.fall(-d, 3);
        return d > 0 ? floor.towards(web, 0.75) : floor.times(1 - shade);
    }
}
