package org.benchleaf.demo;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Composite;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Random;

/** What the lithographer drew: fields, lanes, river, hill, woods and houses of a parish that never was. */
final class ParishDrawing {
    private static final Noise LAND = new Noise(1847);
    private static final double CELL = 44;

    private ParishDrawing() {
    }

    static Path2D bounds() {
        return ring(474, 322, 262, 194, 3);
    }

    static Path2D neighbour() {
        Path2D line = new Path2D.Double();
        for (int i = 0; i <= 60; i++) {
            double y = 40 + i * 9.4;
            double x = 756 + 34 * LAND.layered(12, y, 110, 3) + 26 * StrictMath.sin(y / 120);
            add(line, x, y);
        }
        return line;
    }

    static Path2D river() {
        Path2D line = new Path2D.Double();
        for (int i = 0; i <= 120; i++) {
            double x = 26 + i * 7.07;
            double y = 430 + 60 * StrictMath.sin(x / 130) - 0.16 * x + 26 * LAND.layered(x, 5, 90, 3);
            add(line, x, y);
        }
        return line;
    }

    static Path2D woods() {
        Path2D woods = new Path2D.Double();
        woods.append(ring(232, 214, 48, 34, 9), false);
        woods.append(ring(604, 470, 58, 38, 11), false);
        woods.append(ring(800, 520, 34, 40, 13), false);
        return woods;
    }

    static void lines(Graphics2D g) {
        border(g);
        fields(g);
        water(g);
        lane(g, new double[] {28, 196, 210, 262, 420, 306, 610, 282, 872, 214});
        lane(g, new double[] {398, 30, 388, 160, 430, 306, 470, 430, 452, 610});
        lane(g, new double[] {430, 306, 330, 400, 250, 500, 190, 608});
        village(g);
        hill(g, 600, 168);
        trees(g);
        pen(g, 0.9, 7f, 2f, 1f, 2f);
        g.draw(bounds());
        g.draw(neighbour());
        names(g);
        cartouche(g);
        rose(g, 806, 132);
        chains(g);
    }

    private static void border(Graphics2D g) {
        pen(g, 1.4);
        g.draw(new Rectangle2D.Double(18, 18, 864, 604));
        pen(g, 0.4);
        g.draw(new Rectangle2D.Double(24, 24, 852, 592));
        for (int i = 0; i < 36; i += 2) {
            g.fill(new Rectangle2D.Double(24 + i * 23.67, 20.2, 23.67, 2));
            g.fill(new Rectangle2D.Double(24 + i * 23.67, 617.8, 23.67, 2));
        }
        for (int i = 0; i < 24; i += 2) {
            g.fill(new Rectangle2D.Double(20.2, 24 + i * 24.67, 2, 24.67));
            g.fill(new Rectangle2D.Double(877.8, 24 + i * 24.67, 2, 24.67));
        }
    }

    private static void fields(Graphics2D g) {
        Random chance = new Random(47);
        Shape before = g.getClip();
        pen(g, 0.42);
        for (int row = 0; row < 14; row++) {
            for (int column = 0; column < 20; column++) {
                double[] here = post(column, row);
                hedge(g, here, post(column + 1, row), chance);
                hedge(g, here, post(column, row + 1), chance);
            }
        }
        g.setClip(before);
    }

    private static void hedge(Graphics2D g, double[] a, double[] b, Random chance) {
        boolean drawn = chance.nextInt(7) > 0;
        if (!drawn || outside(a) || outside(b)) {
            return;
        }
        Path2D hedge = new Path2D.Double();
        for (int i = 0; i <= 10; i++) {
            double x = a[0] + (b[0] - a[0]) * i / 10;
            double y = a[1] + (b[1] - a[1]) * i / 10;
            add(hedge, x + 2.6 * LAND.layered(x, y, 14, 2), y + 2.6 * LAND.layered(y, x, 14, 2));
        }
        g.draw(hedge);
        for (int i = 0; i < chance.nextInt(4); i++) {
            double t = chance.nextDouble();
            tree(g, a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, 1.3);
        }
    }

    private static boolean outside(double[] p) {
        boolean title = p[0] < 312 && p[1] > 452;
        boolean windRose = p[0] > 740 && p[1] < 206;
        return title || windRose || p[0] < 30 || p[0] > 870 || p[1] < 30 || p[1] > 610;
    }

    private static double[] post(int column, int row) {
        double x = 32 + column * CELL;
        double y = 34 + row * CELL * 0.97;
        return new double[] {x + 17 * LAND.at(x, y, 31), y + 17 * LAND.at(y + 500, x, 31)};
    }

    private static void water(Graphics2D g) {
        Shape bank = sides(river(), 9);
        erase(g, bank);
        pen(g, 0.6);
        g.draw(bank);
        pen(g, 0.25);
        for (double w : new double[] {6.2, 3.2}) {
            g.draw(sides(river(), w));
        }
    }

    private static void lane(Graphics2D g, double[] p) {
        Path2D way = new Path2D.Double();
        way.moveTo(p[0], p[1]);
        for (int i = 2; i + 1 < p.length; i += 2) {
            double mx = (p[i - 2] + p[i]) / 2;
            double my = (p[i - 1] + p[i + 1]) / 2;
            way.quadTo(p[i - 2], p[i - 1], mx, my);
        }
        way.lineTo(p[p.length - 2], p[p.length - 1]);
        Shape sides = sides(way, 4.4);
        erase(g, sides);
        pen(g, 0.5);
        g.draw(sides);
    }

    /** Gives both sides of a way as one clean outline, without the little crossings that a wide pen leaves in bends. */
    private static Shape sides(Path2D way, double width) {
        return new Area(new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND).createStrokedShape(way));
    }

    private static void erase(Graphics2D g, Shape shape) {
        Composite before = g.getComposite();
        g.setComposite(AlphaComposite.Clear);
        g.fill(shape);
        g.setComposite(before);
    }

    private static void village(Graphics2D g) {
        Random chance = new Random(12);
        for (int i = 0; i < 46; i++) {
            double along = (chance.nextDouble() - 0.5) * 190;
            double off = (chance.nextBoolean() ? 1 : -1) * (5 + 6 * chance.nextDouble());
            boolean east = chance.nextInt(3) > 0;
            double x = east ? 420 + along : 424 + off + along * 0.1;
            double y = east ? 300 + off + along * (along < 0 ? 0.16 : -0.06) : 300 + along * 0.8;
            AffineTransform before = g.getTransform();
            g.rotate((chance.nextDouble() - 0.5) * 0.6, x, y);
            g.fill(new Rectangle2D.Double(x, y, 3 + 3 * chance.nextDouble(), 2.6 + 1.5 * chance.nextDouble()));
            g.setTransform(before);
        }
        erase(g, new Rectangle2D.Double(448, 268, 22, 17));
        pen(g, 0.5);
        g.draw(new Rectangle2D.Double(448, 268, 22, 17));
        g.fill(new Rectangle2D.Double(453, 274, 12, 5));
        g.fill(new Rectangle2D.Double(457, 271, 3.4, 11));
    }

    private static void hill(Graphics2D g, double cx, double cy) {
        erase(g, ring(cx, cy, 66, 42, 5));
        for (int ring = 0; ring < 3; ring++) {
            int strokes = 40 + ring * 26;
            for (int i = 0; i < strokes; i++) {
                double angle = 2 * Math.PI * i / strokes;
                double c = StrictMath.cos(angle);
                double s = StrictMath.sin(angle);
                double r = 18 + ring * 16 + 5 * LAND.layered(60 * c, 60 * s, 30, 2);
                pen(g, 0.35 + 0.45 * Math.max(0, c * 0.7 + s * 0.7));
                g.draw(new Line2D.Double(cx + r * c * 1.4, cy + r * s * 0.85, cx + (r + 11) * c * 1.4, cy + (r + 11) * s * 0.85));
            }
        }
    }

    private static void trees(Graphics2D g) {
        Random chance = new Random(77);
        Shape woods = woods();
        erase(g, woods);
        Rectangle2D all = woods.getBounds2D();
        for (int i = 0; i < 1500; i++) {
            double x = all.getX() + chance.nextDouble() * all.getWidth();
            double y = all.getY() + chance.nextDouble() * all.getHeight();
            if (woods.contains(x, y) && chance.nextInt(2) == 0) {
                tree(g, x, y, 1.6 + chance.nextDouble());
            }
        }
        pen(g, 0.4);
        g.draw(woods);
    }

    private static void tree(Graphics2D g, double x, double y, double r) {
        pen(g, 0.35);
        erase(g, new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
        g.draw(new Arc2D.Double(x - r, y - r, 2 * r, 2 * r, -40, 300, Arc2D.OPEN));
        g.draw(new Line2D.Double(x + r * 0.2, y + r * 0.8, x + r * 1.6, y + r * 0.9));
        g.draw(new Line2D.Double(x + r * 0.4, y + r * 0.3, x + r * 0.9, y + r * 0.5));
    }

    private static void names(Graphics2D g) {
        Type roman = Type.roman();
        name(g, roman.spaced(0.5), "NETHERWICK", 350, 350, 11);
        name(g, roman.leaning(0.25), "Ox Leys", 160, 130, 8);
        name(g, roman.leaning(0.25), "Long Meadow", 640, 390, 8);
        name(g, roman.leaning(0.25), "Harrow Wood", 232, 217, 6.5);
        name(g, roman.leaning(0.25), "Cold Piece", 330, 120, 7);
        name(g, roman.leaning(0.25), "Sallow Copse", 604, 474, 6.5);
        name(g, roman.spaced(0.2), "BEACON", 600, 172, 6);
        name(g, roman.leaning(0.25).spaced(0.4), "River Thrawl", 702, 306, 7);
        name(g, roman.leaning(0.25), "Mill Ham", 520, 538, 7);
        name(g, roman.spaced(0.3), "PART OF OVER STOKELY", 806, 420, 5.4);
    }

    private static void name(Graphics2D g, Type type, String words, double x, double y, double size) {
        double half = type.measure(words, size) / 2;
        erase(g, new Rectangle2D.Double(x - half - 2, y - size * 1.15, half * 2 + 4, size * 1.45));
        g.fill(type.centred(words, x, y, size));
    }

    private static void cartouche(Graphics2D g) {
        erase(g, new Rectangle2D.Double(44, 474, 250, 118));
        pen(g, 1.2);
        g.draw(new Rectangle2D.Double(44, 474, 250, 118));
        pen(g, 0.4);
        g.draw(new Rectangle2D.Double(47.5, 477.5, 243, 111));
        Type roman = Type.roman();
        g.fill(roman.spaced(0.2).centred("MAP OF THE PARISH OF", 169, 499, 8));
        g.fill(new Type(0.24, 0.06, 0.12, 1.1, 0.2, 0).fitted("NETHERWICK", 169, 530, 216, 19));
        g.fill(roman.leaning(0.25).centred("surveyed for the Vestry in the year", 169, 548, 7));
        g.fill(roman.spaced(0.2).centred("1847", 169, 562, 8.5));
        g.fill(roman.centred("A. Penhale, Lithographer, Over Stokely", 169, 578, 5));
    }

    private static void rose(Graphics2D g, double x, double y) {
        pen(g, 0.5);
        for (double r : new double[] {24, 26, 44}) {
            g.draw(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
        }
        for (int i = 0; i < 16; i++) {
            double angle = i * Math.PI / 8;
            double r = i % 4 == 0 ? 56 : i % 2 == 0 ? 40 : 26;
            point(g, x, y, angle, r);
        }
        g.fill(Type.roman().centred("N", x, y - 59, 9));
    }

    private static void point(Graphics2D g, double x, double y, double angle, double r) {
        double s = StrictMath.sin(angle);
        double c = StrictMath.cos(angle);
        Path2D dark = new Path2D.Double();
        dark.moveTo(x, y);
        dark.lineTo(x + r * s, y - r * c);
        dark.lineTo(x + 0.16 * r * StrictMath.sin(angle + 0.7), y - 0.16 * r * StrictMath.cos(angle + 0.7));
        dark.closePath();
        g.fill(dark);
        g.draw(new Line2D.Double(x + r * s, y - r * c, x + 0.16 * r * StrictMath.sin(angle - 0.7),
                y - 0.16 * r * StrictMath.cos(angle - 0.7)));
    }

    private static void chains(Graphics2D g) {
        double x = 620;
        double y = 588;
        erase(g, new Rectangle2D.Double(x - 10, y - 18, 240, 28));
        pen(g, 0.5);
        g.draw(new Rectangle2D.Double(x, y, 200, 3));
        for (int i = 0; i < 10; i += 2) {
            g.fill(new Rectangle2D.Double(x + i * 20, y, 20, 3));
        }
        for (int i = 0; i <= 10; i += 5) {
            g.fill(Type.roman().centred(String.valueOf(i), x + i * 20, y - 3, 5));
        }
        g.fill(Type.roman().left("Chains", x + 206, y + 3.4, 5));
    }

    private static Path2D ring(double cx, double cy, double rx, double ry, int lane) {
        Path2D ring = new Path2D.Double();
        for (int i = 0; i < 90; i++) {
            double angle = 2 * Math.PI * i / 90;
            double c = StrictMath.cos(angle);
            double s = StrictMath.sin(angle);
            double k = 1 + 0.24 * LAND.layered(1.6 * c + lane * 10, 1.6 * s, 1, 3);
            add(ring, cx + rx * k * c, cy + ry * k * s);
        }
        ring.closePath();
        return ring;
    }

    private static void add(Path2D path, double x, double y) {
        if (path.getCurrentPoint() == null) {
            path.moveTo(x, y);
        } else {
            path.lineTo(x, y);
        }
    }

    private static void pen(Graphics2D g, double width, float... dash) {
        g.setStroke(dash.length == 0
                ? new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
                : new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0));
    }
}
