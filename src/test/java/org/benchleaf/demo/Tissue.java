package org.benchleaf.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Thin long-fibred tissue laid on the sheet: a veil with feathered edges, and single fibres that reach beyond it. */
record Tissue(Mask veil, Mask fibres, Rgb tone, double strength) implements Coat {

    /** A strip of tissue from one point to another. */
    record Strip(double x1, double y1, double x2, double y2, double width) {
        double length() {
            return StrictMath.hypot(x2 - x1, y2 - y1);
        }
    }

    static Tissue laid(View view, List<Strip> strips, int seed, Rgb tone, double strength) {
        Mask veil = Mask.drawn(view, g -> strips.forEach(s -> torn(g, s, new Random(seed + strips.indexOf(s)))));
        Mask fibres = Mask.drawn(view, g -> strips.forEach(s -> fibres(g, s, new Random(seed + strips.indexOf(s)))));
        return new Tissue(veil.blurred(0.6), fibres, tone, strength);
    }

    /** Gives many short bridges across a tear, each square to it. */
    static List<Strip> bridges(Tear tear, int count, double length, double width) {
        List<Strip> strips = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double share = 0.06 + 0.96 * i / count;
            double[] a = tear.point(Math.max(0, share - 0.04));
            double[] b = tear.point(Math.min(1, share + 0.04));
            double[] m = tear.point(share);
            double n = StrictMath.hypot(b[0] - a[0], b[1] - a[1]);
            double ux = -(b[1] - a[1]) / n * length / 2;
            double uy = (b[0] - a[0]) / n * length / 2;
            strips.add(new Strip(m[0] - ux, m[1] - uy, m[0] + ux, m[1] + uy, width));
        }
        return strips;
    }

    /** Gives one strip that follows a tear in a few straight pieces and goes a little beyond its tip. */
    static List<Strip> along(Tear tear, double width) {
        List<Strip> strips = new ArrayList<>();
        double[] from = tear.point(0.03);
        for (int i = 1; i <= 4; i++) {
            double[] to = tear.point(i / 4.0);
            strips.add(new Strip(from[0], from[1], to[0], to[1], width));
            from = to;
        }
        return strips;
    }

    @Override
    public Rgb over(double x, double y, Rgb below) {
        double v = veil.at(x, y);
        double f = fibres.at(x, y);
        if (v + f < 0.004) {
            return below;
        }
        return below.towards(tone, strength * (0.62 * v + 0.45 * f));
    }

    private static void torn(Graphics2D g, Strip s, Random chance) {
        double ux = (s.x2 - s.x1) / s.length();
        double uy = (s.y2 - s.y1) / s.length();
        Path2D edge = new Path2D.Double();
        int n = Math.max(6, (int) (s.length() * 4));
        for (int i = 0; i <= 2 * n; i++) {
            double along = (i <= n ? i : 2 * n - i) / (double) n * s.length();
            double out = (i <= n ? 0.5 : -0.5) * s.width * (0.9 + 0.18 * chance.nextDouble());
            double x = s.x1 + ux * along - uy * out;
            double y = s.y1 + uy * along + ux * out;
            if (i == 0) {
                edge.moveTo(x, y);
            } else {
                edge.lineTo(x, y);
            }
        }
        edge.closePath();
        g.fill(edge);
    }

    private static void fibres(Graphics2D g, Strip s, Random chance) {
        double ux = (s.x2 - s.x1) / s.length();
        double uy = (s.y2 - s.y1) / s.length();
        g.setStroke(new BasicStroke(0.07f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        int count = (int) (s.length() * s.width * 1.1);
        for (int i = 0; i < count; i++) {
            double along = chance.nextDouble() * s.length();
            double out = (chance.nextDouble() - 0.5) * s.width;
            double turn = (chance.nextDouble() - 0.5) * Math.PI;
            double reach = 1.5 + 2.6 * chance.nextDouble();
            double dx = StrictMath.cos(turn) * reach;
            double dy = StrictMath.sin(turn) * reach;
            double x = s.x1 + ux * along - uy * out;
            double y = s.y1 + uy * along + ux * out;
            g.setColor(new Color(255, 255, 255, 70 + chance.nextInt(150)));
            double bend = (chance.nextDouble() - 0.5) * reach * 0.5;
            Path2D fibre = new Path2D.Double();
            fibre.moveTo(x - dx * 0.5, y - dy * 0.5);
            fibre.quadTo(x - dy * 0.2 * bend, y + dx * 0.2 * bend, x + dx * 0.5, y + dy * 0.5);
            g.draw(fibre);
        }
    }
}
