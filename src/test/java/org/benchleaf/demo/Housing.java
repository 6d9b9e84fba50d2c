package org.benchleaf.demo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.List;

/** An open folder of unbuffered board: two leaves side by side, the sheet on the right one under four paper corners. */
record Housing(double x, double y, double leafWide, double high, Ground bench, Noise noise) implements Ground {
    private static final Rgb BOARD = Rgb.of(0xe4decf);
    private static final double SPINE = 8;

    @Override
    public Rgb at(double px, double py) {
        double wide = 2 * leafWide + SPINE;
        double in = Math.min(Math.min(px - x, x + wide - px), Math.min(py - y, y + high - py));
        if (in < -1) {
            double under = StrictMath.hypot(Math.max(0, Math.max(x + 4 - px, px - x - wide - 4)),
                    Math.max(0, Math.max(y + 5 - py, py - y - high - 5)));
            return bench.at(px, py).times(1 - 0.4 * Curve.fall(under, 9));
        }
        return bench.at(px, py).times(0.6).towards(board(px, py, in), Curve.rise(-1, 0, in));
    }

    private Rgb board(double px, double py, double in) {
        double middle = px - x - leafWide - SPINE / 2;
        double crease = 0.16 * Curve.bump(middle + SPINE / 2, 1.6) + 0.16 * Curve.bump(middle - SPINE / 2, 1.6)
                + 0.1 * Curve.bump(middle, 30) - (middle < 0 ? 0.03 : 0);
        double grain = 0.012 * noise.layered(px, py, 4, 3) + 0.01 * noise.layered(px, py, 120, 2);
        double edge = 0.08 * Curve.bump(in, 1.6);
        return BOARD.times(1 - crease + grain - edge);
    }

    /** Draws the four paper corners and the pencilled label over the picture. */
    void labelled(BufferedImage picture, View view) {
        Graphics2D g = picture.createGraphics();
        Mask.smooth(g);
        g.transform(view.toPixels());
        double w = LockPlan.WIDE;
        double h = LockPlan.HIGH;
        for (double[] c : List.of(new double[] {-5, -5, 1, 1}, new double[] {w + 5, -5, -1, 1},
                new double[] {-5, h + 5, 1, -1}, new double[] {w + 5, h + 5, -1, -1})) {
            corner(g, c);
        }
        g.setColor(new Color(70, 68, 66, 190));
        Type pencil = new Type(0.06, 0.06, 0, 1, 0.14, 0.12);
        double left = x + 60;
        g.fill(pencil.left("Lock No. 7, plan and sections", left, y + high - 86, 17));
        g.fill(pencil.left("cyanotype - keep from alkali", left, y + high - 56, 17));
        g.fill(pencil.left("unbuffered folder", left, y + high - 26, 17));
        g.dispose();
    }

    private static void corner(Graphics2D g, double[] c) {
        AffineTransform before = g.getTransform();
        g.translate(c[0], c[1]);
        g.scale(c[2], c[3]);
        for (int i = 5; i >= 0; i--) {
            Path2D triangle = new Path2D.Double();
            triangle.moveTo(0, 0);
            triangle.lineTo(58 + i * 1.3, 0);
            triangle.lineTo(0, 58 + i * 1.3);
            triangle.closePath();
            g.setColor(i == 0 ? Rgb.of(0xf6f3ea).color() : new Color(10, 14, 24, 22));
            g.fill(triangle);
        }
        g.setTransform(before);
    }
}
