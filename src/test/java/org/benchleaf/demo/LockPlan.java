package org.benchleaf.demo;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/** The lock plan: a cyanotype, white lines on blue, faded along one edge, dirty, with tears at its edges. */
final class LockPlan {
    static final double WIDE = 560;
    static final double HIGH = 430;
    private static final String FOLDER = "lock-plan";
    private static final Noise NOISE = new Noise(560);
    private static final Outline OUTLINE = new Outline(WIDE, HIGH, 1.2, NOISE,
            List.of(new Outline.Loss(2, 2, 6), new Outline.Loss(558, 428, 4), new Outline.Loss(561, 205, 5)));
    private static final Tear T1 = Tear.from(NOISE, new double[] {214, 0}, new double[] {220, 24},
            new double[] {207, 46}, 1, 2.8);
    private static final Tear T2 = Tear.from(NOISE, new double[] {0, 292}, new double[] {18, 288},
            new double[] {33, 297}, 1, 2);
    private static final Tear T3 = Tear.from(NOISE, new double[] {396, 430}, new double[] {390, 414},
            new double[] {398, 401}, 1, 2.2);
    private static final Rgb BLUE = Rgb.of(0x204b7c);

    private LockPlan() {
    }

    static List<Picture> pictures() {
        return List.of(new Picture(FOLDER, "before-recto", n -> recto(Moment.BEFORE, n)),
                new Picture(FOLDER, "after-recto", n -> recto(Moment.AFTER, n)),
                new Picture(FOLDER, "after-housing", LockPlan::housed));
    }

    static View view(int longSide) {
        return View.ofSheet(WIDE, HIGH, longSide).turned(0.3, WIDE / 2, HIGH / 2);
    }

    private static BufferedImage recto(Moment moment, int longSide) {
        View view = view(longSide);
        return Target.beside(new Bench(view, Ground.grey(7), Light.normal()).photograph(sheet(moment, view)), view, 15);
    }

    private static BufferedImage housed(int longSide) {
        View view = View.of(-735, -80, 1390, 600, longSide);
        Housing folder = new Housing(-640, -30, WIDE + 62, HIGH + 60, Ground.grey(7), new Noise(51));
        View laid = view.turned(-0.3, WIDE / 2, HIGH / 2);
        BufferedImage picture = new Bench(laid, folder, Light.normal()).photograph(sheet(Moment.AFTER, laid));
        folder.labelled(picture, view);
        return picture;
    }

    static Sheet sheet(Moment moment, View view) {
        boolean before = moment.untreated();
        Rgb dirt = Rgb.of(0x6f6a5c);
        Mask lines = Mask.drawn(view, LockPlan::plan);
        List<Coat> coats = new ArrayList<>();
        coats.add(Paper.wove(Rgb.of(0xe6dfcb), 41));
        coats.add(new Cyanotype(NOISE, BLUE, Mask.drawn(view, LockPlan::plan).blurred(0.25), lines, LockPlan::faded));
        coats.add(Stains.edges(OUTLINE, NOISE, 8, 0.3));
        coats.add(Stains.grime(new Noise(46), dirt, before ? 0.5 : 0.1, LockPlan::handled));
        coats.add(dust(before ? 0.5 : 0.08));
        if (!before) {
            coats.add(Tissue.laid(view, mends(), 17, Rgb.of(0x9fb0bd), 0.16));
        }
        List<Tear> tears = before ? List.of(T1, T2, T3) : List.of(T1.closed(), T2.closed(), T3.closed());
        List<Relief> reliefs = List.of(Relief.tooth(NOISE, 0.014),
                Relief.cockling(NOISE, before ? 2.2 : 0.7, 95, (x, y) -> 0.5 + Curve.fall(OUTLINE.inside(x, y), 60)));
        return new Sheet(OUTLINE, tears, reliefs, coats, Rgb.of(0xe9e6da));
    }

    static List<Tissue.Strip> mends() {
        return Tissue.over(List.of(T1, T2, T3), new Tissue.Lay(8, 5, 40));
    }

    /** Light has faded the right-hand edge, where the plan stuck out of its roll. */
    private static double faded(double x, double y) {
        double d = WIDE - x + 12 * NOISE.layered(x, y, 60, 3);
        double other = Math.min(y, Math.min(x, HIGH - y));
        return Math.min(1, 0.72 * (1 - Curve.rise(14, 74, d)) + 0.3 * Curve.fall(other, 5)
                + 0.07 * (1 + NOISE.layered(x, y, 80, 3)));
    }

    private static double handled(double x, double y) {
        return 0.25 + 0.9 * Curve.fall(OUTLINE.inside(x, y), 26) + 0.7 * Curve.bump(x - 90, 90) * Curve.bump(y - 350, 70);
    }

    /** Dust lies pale on the blue. */
    private static Coat dust(double strength) {
        Noise lie = new Noise(47);
        return (x, y, below) -> {
            double drift = Curve.rise(-0.15, 0.75, lie.layered(x, y * 1.6, 85, 4));
            double speck = 0.6 + 0.6 * lie.layered(x, y, 0.9, 2);
            return below.towards(Rgb.of(0xa39f94), strength * drift * speck * 0.8);
        };
    }

    private static void plan(Graphics2D g) {
        pen(g, 1.1);
        g.draw(new Rectangle2D.Double(15, 15, WIDE - 30, HIGH - 30));
        pen(g, 0.45);
        g.draw(new Rectangle2D.Double(18, 18, WIDE - 36, HIGH - 36));
        fromAbove(g, 120);
        alongside(g, 268);
        across(g, 448, 262);
        titleBlock(g);
        northArrow(g, 506, 66);
    }

    private static void fromAbove(Graphics2D g, double y) {
        Type type = Type.plain().leaning(0.2);
        g.fill(type.left("PLAN", 34, y - 72, 6));
        pen(g, 1);
        for (int side = -1; side <= 1; side += 2) {
            wall(g, y, side);
            masonry(g, y, side);
            gates(g, y, side);
        }
        pen(g, 0.35);
        for (double x = 40; x < 520; x += 14) {
            g.draw(new Line2D.Double(x, y, x + 9, y));
            g.draw(new Line2D.Double(x + 11, y, x + 12, y));
        }
        for (int i = 0; i < 8; i++) {
            double cx = 140 + i * 38;
            g.draw(new Ellipse2D.Double(cx, y - 52, 3, 3));
            g.draw(new Ellipse2D.Double(cx, y + 49, 3, 3));
        }
        measured(g, 158, 402, y + 66, "72 FT BETWEEN SILLS");
        g.fill(type.left("UPPER POUND", 34, y + 10, 4.2));
        g.fill(type.right("TAIL OF LOCK", 526, y + 10, 4.2));
        g.fill(type.centred("TOWING PATH", 280, y - 58, 4.2));
    }

    private static void wall(Graphics2D g, double y, int side) {
        Path2D wall = new Path2D.Double();
        wall.moveTo(30, y + side * 60);
        wall.curveTo(70, y + side * 58, 82, y + side * 34, 112, y + side * 30);
        wall.lineTo(150, y + side * 30);
        wall.lineTo(154, y + side * 24);
        wall.lineTo(396, y + side * 24);
        wall.lineTo(400, y + side * 30);
        wall.lineTo(440, y + side * 30);
        wall.curveTo(468, y + side * 34, 484, y + side * 58, 530, y + side * 60);
        pen(g, 1.1);
        g.draw(wall);
        pen(g, 0.4);
        g.draw(new Line2D.Double(120, y + side * 42, 432, y + side * 42));
        g.draw(new Line2D.Double(120, y + side * 30, 120, y + side * 42));
        g.draw(new Line2D.Double(432, y + side * 30, 432, y + side * 42));
    }

    private static void masonry(Graphics2D g, double y, int side) {
        pen(g, 0.28);
        for (double x = 126; x < 430; x += 7) {
            double inner = x > 152 && x < 398 ? 24 : 30;
            g.draw(new Line2D.Double(x, y + side * inner, x, y + side * (inner + 6)));
            g.draw(new Line2D.Double(x + 3.5, y + side * (inner + 6), x + 3.5, y + side * 42));
        }
        g.draw(new Line2D.Double(154, y + side * 30, 396, y + side * 30));
    }

    private static void gates(Graphics2D g, double y, int side) {
        for (double x : new double[] {150, 400}) {
            pen(g, 2);
            g.draw(new Line2D.Double(x - 4, y + side * 27, x - 15, y));
            pen(g, 0.9);
            g.draw(new Line2D.Double(x - 4, y + side * 27, x + 12, y + side * 64));
            pen(g, 0.35);
            g.draw(new Ellipse2D.Double(x - 6.5, y + side * 27 - 2.5, 5, 5));
        }
        pen(g, 0.25);
        for (int i = 0; i < 26; i++) {
            double x = 164 + i * 8.6;
            double yy = y + side * (6 + i * 7 % 15);
            g.draw(new Line2D.Double(x, yy, x + 14, yy));
        }
    }

    private static void alongside(Graphics2D g, double top) {
        Type type = Type.plain().leaning(0.2);
        g.fill(type.left("LONGITUDINAL SECTION", 34, top - 22, 6));
        pen(g, 1.1);
        Path2D bed = new Path2D.Double();
        bed.moveTo(34, top + 42);
        bed.lineTo(128, top + 42);
        bed.lineTo(128, top + 34);
        bed.lineTo(144, top + 34);
        bed.lineTo(144, top + 76);
        bed.lineTo(352, top + 76);
        bed.lineTo(352, top + 70);
        bed.lineTo(362, top + 70);
        bed.lineTo(362, top + 78);
        bed.lineTo(410, top + 78);
        g.draw(bed);
        g.draw(new Line2D.Double(34, top, 410, top));
        pen(g, 0.4);
        g.draw(new Line2D.Double(34, top + 10, 136, top + 10));
        g.draw(new Line2D.Double(150, top + 46, 410, top + 46));
        for (double x : new double[] {134, 346}) {
            pen(g, 0.7);
            g.draw(new Rectangle2D.Double(x, top - 4, 9, x < 200 ? 40 : 76));
            pen(g, 0.3);
            for (double y = top + 4; y < top + (x < 200 ? 34 : 70); y += 8) {
                g.draw(new Line2D.Double(x, y, x + 9, y));
            }
            g.draw(new Line2D.Double(x + 4.5, top - 4, x + 4.5, top - 14));
            g.draw(new Rectangle2D.Double(x + 1, top - 16, 7, 3));
        }
        hatch(g, top);
        g.fill(type.left("UPPER LEVEL", 40, top + 8, 3.4));
        g.fill(type.left("LOWER LEVEL", 220, top + 44, 3.4));
        measured(g, 144, 352, top + 94, "GRANITE COPING. BRICK IN CEMENT");
    }

    private static void hatch(Graphics2D g, double top) {
        pen(g, 0.25);
        for (double x = 36; x < 408; x += 5) {
            double floor = x < 128 ? 42 : x < 144 ? 34 : x < 352 ? 76 : 78;
            g.draw(new Line2D.Double(x, top + floor + 8, x + 5, top + floor));
        }
        for (double y = top + 12; y < top + 74; y += 6) {
            for (double x = 158 + (y - top) % 12; x < 338; x += 12) {
                g.draw(new Line2D.Double(x, y, x + 5, y));
            }
        }
    }

    private static void across(Graphics2D g, double x, double top) {
        Type type = Type.plain().leaning(0.2);
        g.fill(type.left("CROSS SECTION", x - 18, top - 18, 5));
        pen(g, 1);
        Path2D section = new Path2D.Double();
        section.moveTo(x - 18, top);
        section.lineTo(x + 12, top);
        section.lineTo(x + 14, top + 54);
        section.curveTo(x + 24, top + 62, x + 42, top + 62, x + 52, top + 54);
        section.lineTo(x + 54, top);
        section.lineTo(x + 84, top);
        g.draw(section);
        pen(g, 0.5);
        Path2D back = new Path2D.Double();
        back.moveTo(x - 6, top);
        back.lineTo(x - 8, top + 24);
        back.lineTo(x - 14, top + 24);
        back.lineTo(x - 14, top + 70);
        back.lineTo(x + 80, top + 70);
        back.lineTo(x + 80, top + 24);
        back.lineTo(x + 74, top + 24);
        back.lineTo(x + 72, top);
        g.draw(back);
        pen(g, 0.3);
        g.draw(new Line2D.Double(x + 13, top + 26, x + 53, top + 26));
        for (double y = top + 4; y < top + 66; y += 5) {
            g.draw(new Line2D.Double(x - (y < top + 26 ? 6 : 13), y, x + 12, y - 3));
            g.draw(new Line2D.Double(x + 54, y, x + (y < top + 26 ? 72 : 79), y - 3));
        }
    }

    private static void measured(Graphics2D g, double from, double to, double y, String words) {
        pen(g, 0.35);
        g.draw(new Line2D.Double(from, y, to, y));
        for (double x : new double[] {from, to}) {
            int turn = x == from ? 1 : -1;
            g.draw(new Line2D.Double(x, y - 4, x, y + 4));
            g.draw(new Line2D.Double(x, y, x + turn * 4, y - 1.4));
            g.draw(new Line2D.Double(x, y, x + turn * 4, y + 1.4));
        }
        g.fill(Type.plain().leaning(0.2).centred(words, (from + to) / 2, y - 2, 3.6));
    }

    private static void titleBlock(Graphics2D g) {
        pen(g, 0.7);
        g.draw(new Rectangle2D.Double(424, 352, 112, 56));
        pen(g, 0.3);
        g.draw(new Rectangle2D.Double(426, 354, 108, 52));
        g.draw(new Line2D.Double(434, 380, 526, 380));
        Type type = Type.plain();
        g.fill(type.centred("TILLOW CANAL", 480, 363, 4.4));
        g.fill(Type.roman().spaced(0.1).centred("LOCK No. 7", 480, 376, 9));
        g.fill(type.centred("PLAN AND SECTIONS", 480, 388, 3.8));
        g.fill(type.centred("8 FEET TO 1 INCH", 480, 395, 3.2));
        g.fill(type.centred("E. HALLAWAY, 1902", 480, 402, 3.2));
    }

    private static void northArrow(Graphics2D g, double x, double y) {
        pen(g, 0.6);
        g.draw(new Line2D.Double(x, y + 22, x, y - 22));
        g.draw(new Ellipse2D.Double(x - 8, y - 8, 16, 16));
        Path2D head = new Path2D.Double();
        head.moveTo(x, y - 26);
        head.lineTo(x + 4, y - 10);
        head.lineTo(x, y - 13);
        head.closePath();
        g.fill(head);
        g.draw(new Line2D.Double(x, y - 26, x - 4, y - 10));
        g.fill(Type.plain().centred("N", x, y - 29, 6));
    }

    private static void pen(Graphics2D g, double width) {
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
    }
}
