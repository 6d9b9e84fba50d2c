package org.benchleaf.demo;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/** The flood poster: a colour letterpress bill for a river fair, grimy, mouldy, water-stained along its foot. */
final class FloodPoster {
    static final double WIDE = 380;
    static final double HIGH = 510;
    private static final String FOLDER = "flood-poster";
    private static final Noise NOISE = new Noise(510);
    private static final Outline OUTLINE = new Outline(WIDE, HIGH, 1.3, NOISE,
            List.of(new Outline.Loss(1, 508, 9), new Outline.Loss(379, 1, 4), new Outline.Loss(250, 511, 4)));
    private static final Tear T1 = Tear.from(NOISE, new double[] {380, 404}, new double[] {366, 410},
            new double[] {352, 405}, 1, 1.6);
    private static final Tideline TIDE = new Tideline(NOISE, WIDE, 424, 452, 26, 1);
    private static final Rgb RED = Rgb.of(0xa5322a);
    private static final Rgb BLUE = Rgb.of(0x1f4468);
    private static final Rgb OCHRE = Rgb.of(0xd6a23a);

    private FloodPoster() {
    }

    static List<Picture> pictures() {
        return List.of(new Picture(FOLDER, "before-recto", n -> recto(Moment.BEFORE, n)),
                new Picture(FOLDER, "after-recto", n -> recto(Moment.AFTER, n)),
                new Picture(FOLDER, "before-detail-mould", FloodPoster::detail));
    }

    static View view(int longSide) {
        return View.ofSheet(WIDE, HIGH, longSide).turned(0.3, WIDE / 2, HIGH / 2);
    }

    private static BufferedImage recto(Moment moment, int longSide) {
        View view = view(longSide);
        return Target.beside(new Bench(view, Ground.grey(9), Light.normal()).photograph(sheet(moment, view)), view, 12);
    }

    private static BufferedImage detail(int longSide) {
        View view = View.of(14, 384, 104, 78, longSide);
        BufferedImage picture = new Bench(view, Ground.grey(9), Light.normal()).photograph(sheet(Moment.BEFORE, view));
        return Target.beside(picture, view, 2);
    }

    static Sheet sheet(Moment moment, View view) {
        boolean before = moment.untreated();
        Rgb soot = Rgb.of(0x5f5a4e);
        List<Coat> coats = new ArrayList<>(List.of(Paper.wove(Rgb.of(0xefe5ca), 61), Stains.edges(OUTLINE, NOISE, 12, 0.36),
                Stains.tone(NOISE, Rgb.of(0xb98f58), 0.08)));
        coats.add(new Ink(Mask.drawn(view, FloodPoster::ochre), OCHRE, 0.84, 0.2, new Noise(1)));
        coats.add(new Ink(Mask.drawn(view, FloodPoster::red), RED, 0.88, 0.22, new Noise(2)));
        coats.add(new Ink(Mask.drawn(view, FloodPoster::blue), BLUE, 0.9, 0.2, new Noise(3)));
        coats.add(TIDE.faded(before ? 0.95 : 0.8));
        coats.add(Stains.grime(new Noise(35), soot, before ? 0.8 : 0.15, FloodPoster::dirty));
        coats.add(Mould.clustered(66, before ? 0.85 : 0, before ? 0.5 : 0.42, new double[] {62, 420, 29, 120},
                new double[] {40, 300, 20, 40}, new double[] {190, 470, 46, 80}, new double[] {318, 446, 28, 60},
                new double[] {330, 90, 18, 22}));
        List<Relief> reliefs = List.of(Relief.tooth(NOISE, 0.014),
                Relief.cockling(NOISE, before ? 2.4 : 1.1, 80, (x, y) -> 0.3 + Curve.rise(-60, 30, TIDE.depth(x, y))));
        return new Sheet(OUTLINE, List.of(before ? T1 : T1.closed()), reliefs, coats, Rgb.of(0xf1e8d2));
    }

    /** Silt at the foot, soot at the head and along the left side where the next bill did not cover it. */
    private static double dirty(double x, double y) {
        return 0.22 + 0.6 * Curve.rise(-10, 80, TIDE.depth(x, y)) + 0.6 * Curve.fall(y, 55)
                + 0.55 * Curve.fall(x, 26) + 0.4 * Curve.fall(WIDE - x, 14);
    }

    private static void blue(Graphics2D g) {
        double c = WIDE / 2;
        frame(g);
        g.fill(Type.roman().spaced(0.3).centred("ON THE MILL MEADOW", c, 63, 9));
        g.fill(new Type(0.23, 0.08, 0.06, 1, 0.22, 0).fitted("RIVER FAIR", c, 178, 272, 40));
        boat(g, c, 300);
        waves(g, c);
        g.fill(new Type(0.22, 0.07, 0.1, 1, 0.22, 0).fitted("WHIT MONDAY", c, 392, 270, 22));
        g.fill(Type.roman().spaced(0.1).centred("Boat Races - Brass Band - Swimming Match", c, 411, 8.6));
        g.fill(Type.roman().spaced(0.1).centred("Lanterns on the Water at Dusk", c, 425, 8.6));
        g.fill(Type.plain().spaced(0.1).centred("GATES AT NOON", c, 452, 8));
    }

    private static void red(Graphics2D g) {
        double c = WIDE / 2;
        g.fill(new Type(0.24, 0.09, 0.05, 1, 0.25, 0).fitted("ALDERMERE", c, 118, 268, 36));
        g.fill(new Rectangle2D.Double(c - 120, 194, 240, 1.6));
        g.fill(new Rectangle2D.Double(c - 120, 434, 84, 1.2));
        g.fill(new Rectangle2D.Double(c + 36, 434, 84, 1.2));
        for (int i = -1; i <= 1; i++) {
            g.fill(lozenge(c + i * 16, 434.6, i == 0 ? 6 : 4));
        }
        Path2D sail = new Path2D.Double();
        sail.moveTo(c - 2, 222);
        sail.curveTo(c - 34, 246, c - 56, 276, c - 62, 302);
        sail.lineTo(c - 2, 302);
        sail.closePath();
        g.fill(sail);
        g.fill(pennant(c));
    }

    private static Path2D pennant(double c) {
        Path2D p = new Path2D.Double();
        p.moveTo(c + 1, 211);
        p.curveTo(c + 10, 207, c + 18, 216, c + 30, 211);
        p.lineTo(c + 1, 221);
        p.closePath();
        return p;
    }

    private static void ochre(Graphics2D g) {
        double c = WIDE / 2;
        g.fill(new Arc2D.Double(c - 60, 262, 120, 120, 0, 180, Arc2D.PIE));
        for (int i = 0; i <= 18; i++) {
            AffineTransform before = g.getTransform();
            g.rotate(StrictMath.toRadians(-90 + i * 10), c, 322);
            Path2D ray = new Path2D.Double();
            ray.moveTo(c - 1.6, 256);
            ray.lineTo(c - 5.4, 322 - (i % 2 == 0 ? 124 : 112));
            ray.lineTo(c + 5.4, 322 - (i % 2 == 0 ? 124 : 112));
            ray.lineTo(c + 1.6, 256);
            ray.closePath();
            g.fill(ray);
            g.setTransform(before);
        }
        border((x, y) -> g.fill(new Ellipse2D.Double(x - 4.2, y - 4.2, 8.4, 8.4)));
    }

    private static void boat(Graphics2D g, double c, double y) {
        Path2D hull = new Path2D.Double();
        hull.moveTo(c - 84, y + 12);
        hull.curveTo(c - 40, y + 18, c + 40, y + 18, c + 90, y + 6);
        hull.curveTo(c + 84, y + 24, c + 66, y + 36, c + 48, y + 38);
        hull.lineTo(c - 52, y + 38);
        hull.curveTo(c - 70, y + 36, c - 80, y + 26, c - 84, y + 12);
        g.fill(hull);
        g.fill(new Rectangle2D.Double(c - 1.5, 208, 3, 106));
        Path2D jib = new Path2D.Double();
        jib.moveTo(c + 5, 226);
        jib.curveTo(c + 28, 250, c + 48, 276, c + 68, 300);
        jib.lineTo(c + 5, 304);
        jib.closePath();
        g.setStroke(new BasicStroke(2.2f));
        g.draw(jib);
        for (int i = 0; i < 5; i++) {
            g.setStroke(new BasicStroke(0.9f));
            g.draw(new Line2D.Double(c + 8, 246 + i * 12, c + 18 + i * 10.4, 246 + i * 12));
        }
    }

    private static void waves(Graphics2D g, double c) {
        for (int row = 0; row < 3; row++) {
            g.setStroke(new BasicStroke(3.4f - row * 0.8f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            Path2D wave = new Path2D.Double();
            double y = 344 + row * 8;
            wave.moveTo(c - 132 + row * 8, y);
            for (double x = c - 132 + row * 8; x < c + 124 - row * 8; x += 16) {
                wave.quadTo(x + 4, y - 6, x + 8, y);
                wave.quadTo(x + 12, y + 4, x + 16, y);
            }
            g.draw(wave);
        }
    }

    private static void frame(Graphics2D g) {
        g.setStroke(new BasicStroke(1.6f));
        g.draw(new Rectangle2D.Double(17, 17, WIDE - 34, HIGH - 34));
        g.setStroke(new BasicStroke(0.8f));
        g.draw(new Rectangle2D.Double(38, 38, WIDE - 76, HIGH - 76));
        border((x, y) -> leaves(g, x, y));
    }

    private static void leaves(Graphics2D g, double x, double y) {
        AffineTransform before = g.getTransform();
        g.translate(x, y);
        for (int i = 0; i < 4; i++) {
            g.rotate(Math.PI / 2);
            Path2D leaf = new Path2D.Double();
            leaf.moveTo(1.5, 1.5);
            leaf.quadTo(2.2, 7.4, 7.6, 7.6);
            leaf.quadTo(7.4, 2.2, 1.5, 1.5);
            g.fill(leaf);
        }
        g.fill(new Ellipse2D.Double(-1.4, -1.4, 2.8, 2.8));
        g.setTransform(before);
    }

    private interface Sort {
        void at(double x, double y);
    }

    /** Sets one ornament after another round the border, as a compositor would. */
    private static void border(Sort sort) {
        double left = 27.5;
        int across = 17;
        int down = 24;
        double stepX = (WIDE - 2 * left) / across;
        double stepY = (HIGH - 2 * left) / down;
        for (int i = 0; i <= across; i++) {
            sort.at(left + i * stepX, left);
            sort.at(left + i * stepX, HIGH - left);
        }
        for (int i = 1; i < down; i++) {
            sort.at(left, left + i * stepY);
            sort.at(WIDE - left, left + i * stepY);
        }
    }

    private static Path2D lozenge(double x, double y, double r) {
        Path2D p = new Path2D.Double();
        p.moveTo(x - r, y);
        p.lineTo(x, y - r * 0.8);
        p.lineTo(x + r, y);
        p.lineTo(x, y + r * 0.8);
        p.closePath();
        return p;
    }
}
