package org.benchleaf.demo;

import java.util.ArrayList;
import java.util.List;

/**
 * A tear that runs in from an edge: a crooked line, open by some millimetres at the edge and closed at its tip.
 *
 * <p>The part on the flap's side is moved away from the other; a mended tear is the same line with nothing open.
 */
final class Tear {
    private static final double FLAP_REACH = 45;
    /** Points of the line that lie outside the sheet, so that the tear is open right through its edge. */
    private static final int BEFORE_THE_EDGE = 2;
    private static final Near FAR = new Near(1e9, 1, 0, 0);
    private final double[] xs;
    private final double[] ys;
    private final double[] along;
    private final int flap;
    private final double open;
    private final Noise noise;

    /** A point's distance from the line (above zero on the flap's side), how far along it is, and the way across. */
    record Near(double distance, double along, double acrossX, double acrossY) {
    }

    private Tear(double[] xs, double[] ys, int flap, double open, Noise noise) {
        this.xs = xs;
        this.ys = ys;
        this.flap = flap;
        this.open = open;
        this.noise = noise;
        this.along = lengths(xs, ys);
    }

    /** Tears from the edge point through the bend to the tip; {@code open} is the gap at the edge. */
    static Tear from(Noise noise, double[] edge, double[] bend, double[] tip, int flap, double open) {
        List<double[]> points = new ArrayList<>();
        int n = 36;
        for (int i = -BEFORE_THE_EDGE; i <= n; i++) {
            double t = (double) i / n;
            double a = (1 - t) * (1 - t);
            double b = 2 * t * (1 - t);
            double x = a * edge[0] + b * bend[0] + t * t * tip[0];
            double y = a * edge[1] + b * bend[1] + t * t * tip[1];
            double jag = 0.9 * (1 - Math.max(0, t) * 0.5);
            points.add(new double[] {x + jag * noise.layered(x, y, 5, 3), y + jag * noise.layered(y, x, 5, 3)});
        }
        double[] xs = points.stream().mapToDouble(p -> p[0]).toArray();
        double[] ys = points.stream().mapToDouble(p -> p[1]).toArray();
        return new Tear(xs, ys, flap, open, noise);
    }

    /** Gives the same tear with its edges brought together again. */
    Tear closed() {
        return new Tear(xs, ys, flap, 0, noise);
    }

    double gap(Near near) {
        return open <= 0 || near.along >= 1 ? 0 : open * StrictMath.pow(1 - near.along, 0.8);
    }

    /** Gives how far the flap has moved where the point lies; 0 on the side that stayed. */
    double shift(Near near) {
        double gap = gap(near);
        return near.distance <= 0 || gap == 0 ? 0 : gap * Curve.fall(near.distance - gap, FLAP_REACH);
    }

    /** Gives how open the gap is at the point, from 0 to 1, with an edge one pixel soft. */
    double openness(Near near, double pixel) {
        double gap = gap(near);
        if (gap <= 0) {
            return 0;
        }
        double soft = pixel * 0.7;
        return Curve.rise(-soft, soft, near.distance) * Curve.rise(-soft, soft, gap - near.distance)
                * Curve.rise(0, pixel, gap);
    }

    /** Gives the torn fibres beside the gap, or the fine line that is left of a mended tear. */
    Rgb edged(double x, double y, Near near, Rgb below, Rgb fibre) {
        if (near.along >= 1 || Math.abs(near.distance) > 8) {
            return below;
        }
        if (open <= 0) {
            double line = Curve.bump(near.distance, 0.22) * (0.55 + 0.45 * noise.at(x, y, 3));
            return below.stained(Rgb.of(0x9a8468), 0.7 * line);
        }
        double ragged = 0.6 + 0.55 * noise.layered(x, y, 1.6, 3);
        double lip = (0.3 + 0.3 * open) * (0.4 + 0.6 * (1 - near.along)) * ragged;
        double d = near.distance <= 0 ? -near.distance : (near.distance - gap(near)) * 2.2;
        return below.towards(fibre, 0.85 * (1 - Curve.rise(lip * 0.55, lip, d)));
    }

    /** Gives where a point lies beside the line; far away it is only said to be far. */
    Near near(double x, double y) {
        if (StrictMath.hypot(x - xs[xs.length / 2], y - ys[ys.length / 2]) > along[along.length - 1] + 3 * FLAP_REACH) {
            return FAR;
        }
        double best = Double.MAX_VALUE;
        Near near = FAR;
        for (int i = 0; i + 1 < xs.length; i++) {
            double dx = xs[i + 1] - xs[i];
            double dy = ys[i + 1] - ys[i];
            double length = along[i + 1] - along[i];
            double t = Curve.hold(((x - xs[i]) * dx + (y - ys[i]) * dy) / (length * length));
            double ox = x - xs[i] - t * dx;
            double oy = y - ys[i] - t * dy;
            double squared = ox * ox + oy * oy;
            if (squared < best) {
                best = squared;
                double side = (dx * oy - dy * ox) * flap;
                double from = (along[i] + t * length) / along[along.length - 1];
                near = new Near(side < 0 ? -StrictMath.sqrt(squared) : StrictMath.sqrt(squared), from,
                        -dy / length * flap, dx / length * flap);
            }
        }
        return near;
    }

    /** Gives the point some share of the way from the edge to the tip. */
    double[] point(double share) {
        double wanted = share * along[along.length - 1];
        int i = 1;
        while (i < along.length - 1 && along[i] < wanted) {
            i++;
        }
        double t = (wanted - along[i - 1]) / (along[i] - along[i - 1]);
        return new double[] {xs[i - 1] + t * (xs[i] - xs[i - 1]), ys[i - 1] + t * (ys[i] - ys[i - 1])};
    }

    /** Gives how far it is in a straight line from the edge of the sheet to the tip, in millimetres, as a case states it. */
    double extent() {
        return StrictMath.hypot(xs[xs.length - 1] - xs[BEFORE_THE_EDGE], ys[ys.length - 1] - ys[BEFORE_THE_EDGE]);
    }

    /** Gives how long the crooked line is from the edge of the sheet to the tip, in millimetres. */
    double length() {
        return along[along.length - 1] - along[BEFORE_THE_EDGE];
    }

    /** Gives the point some millimetres from the edge of the sheet along the line, which runs on straight at both ends. */
    double[] at(double millimetres) {
        double wanted = along[BEFORE_THE_EDGE] + millimetres;
        double last = along[along.length - 1];
        double[] point = point(Curve.hold(wanted / last));
        double over = wanted < 0 ? wanted : Math.max(0, wanted - last);
        double[] from = point(wanted < 0 ? 0 : 0.8);
        double[] to = point(wanted < 0 ? 0.2 : 1);
        double run = StrictMath.hypot(to[0] - from[0], to[1] - from[1]);
        return new double[] {point[0] + over * (to[0] - from[0]) / run, point[1] + over * (to[1] - from[1]) / run};
    }

    private static double[] lengths(double[] xs, double[] ys) {
        double[] along = new double[xs.length];
        for (int i = 1; i < xs.length; i++) {
            along[i] = along[i - 1] + StrictMath.hypot(xs[i] - xs[i - 1], ys[i] - ys[i - 1]);
        }
        return along;
    }
}
