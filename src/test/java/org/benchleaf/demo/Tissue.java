package org.benchleaf.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Thin long-fibred tissue laid on the sheet: a veil with feathered edges, and single fibres that run across the strip and beyond it. */
record Tissue(Mask veil, Mask fibres, Rgb tone, double strength) implements Coat {
    /** How far fibres turn from straight across, to both sides together, in radians. */
    private static final double FIBRES_TURN = 1.4;

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

    /** How a case says that its tears are mended: width of the strips, how far they reach beyond, the longest piece, in millimetres. */
    record Lay(double width, double lap, double piece) {
    }

    /** Gives the pieces over a tear, each straight and all alike: as many as the amounts of the case are worked out for. */
    static List<Strip> over(Tear tear, Lay lay) {
        int count = (int) Math.ceil((tear.extent() + 2 * lay.lap) / lay.piece);
        double whole = tear.length() + 2 * lay.lap;
        List<Strip> strips = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            strips.add(along(tear, whole * i / count - lay.lap, whole * (i + 1) / count - lay.lap, lay.width));
        }
        return strips;
    }

    /** Where the tear bends, half of the bend lies on either side of the middle of the piece. */
    private static Strip along(Tear tear, double begin, double end, double width) {
        double[] from = tear.at(begin);
        double[] to = tear.at(end);
        double[] middle = tear.at((begin + end) / 2);
        double x = (middle[0] - (from[0] + to[0]) / 2) / 2;
        double y = (middle[1] - (from[1] + to[1]) / 2) / 2;
        return new Strip(from[0] + x, from[1] + y, to[0] + x, to[1] + y, width);
    }

    static List<Strip> over(List<Tear> tears, Lay lay) {
        return tears.stream().flatMap(tear -> over(tear, lay).stream()).toList();
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
            double turn = (chance.nextDouble() - 0.5) * FIBRES_TURN;
            double reach = 1.5 + 2.6 * chance.nextDouble();
            double dx = (-uy * StrictMath.cos(turn) + ux * StrictMath.sin(turn)) * reach;
            double dy = (ux * StrictMath.cos(turn) + uy * StrictMath.sin(turn)) * reach;
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
