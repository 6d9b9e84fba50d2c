package org.benchleaf.demo;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** The ferry letter: iron-gall ink on laid paper, with haloed and cracked strokes and the brown of an old mat. */
final class FerryLetter {
    static final double WIDE = 203;
    static final double HIGH = 254;
    private static final String FOLDER = "ferry-letter";
    private static final Noise NOISE = new Noise(254);
    private static final Outline OUTLINE = new Outline(WIDE, HIGH, 0.7, NOISE, List.of(new Outline.Loss(202, 253, 3)));
    private static final Tear T1 = Tear.from(NOISE, new double[] {203, 87}, new double[] {194, 84},
            new double[] {186, 88}, 1, 1);
    private static final Fold UPPER = new Fold(0, 85.5, WIDE, 86, -0.03, 0.9);
    private static final Fold LOWER = new Fold(0, 170, WIDE, 169.4, 0.026, 0.9);
    private static final List<Cursive.Mark> HAND = written();
    private static final double HEAVY = 0.36;

    private FerryLetter() {
    }

    static List<Picture> pictures() {
        return List.of(new Picture(FOLDER, "before-recto", n -> recto(Moment.BEFORE, n)),
                new Picture(FOLDER, "before-verso", FerryLetter::verso),
                new Picture(FOLDER, "after-recto", n -> recto(Moment.AFTER, n)),
                new Picture(FOLDER, "detail-ink", FerryLetter::detail));
    }

    static View view(int longSide) {
        return View.ofSheet(WIDE, HIGH, longSide).turned(-0.4, WIDE / 2, HIGH / 2);
    }

    private static BufferedImage recto(Moment moment, int longSide) {
        View view = view(longSide);
        return Target.beside(new Bench(view, Ground.grey(6), Light.normal()).photograph(sheet(moment, view)), view, 8);
    }

    private static BufferedImage verso(int longSide) {
        View view = View.ofSheet(WIDE, HIGH, longSide).turned(0.3, WIDE / 2, HIGH / 2).turnedOver(WIDE);
        return Target.beside(new Bench(view, Ground.grey(6), Light.normal()).photograph(back(view)), view, 8);
    }

    private static BufferedImage detail(int longSide) {
        View view = View.of(26, 100, 64, 46, longSide);
        BufferedImage picture = new Bench(view, Ground.grey(6), Light.normal()).photograph(sheet(Moment.BEFORE, view));
        return Target.beside(picture, view, 1);
    }

    static Sheet sheet(Moment moment, View view) {
        boolean before = moment.untreated();
        List<Coat> coats = new ArrayList<>(paper(before));
        coats.addAll(ink(view));
        if (!before) {
            coats.add(Tissue.laid(view, mends(), 14, Rgb.of(0xefe6d0), 0.45));
        }
        return new Sheet(OUTLINE, List.of(before ? T1 : T1.closed()), reliefs(before), coats, Rgb.of(0xf2ead6));
    }

    /** Over the tear; the piece over the crack does not show from the front. */
    static List<Tissue.Strip> mends() {
        return Tissue.over(T1, new Tissue.Lay(6, 4, 30));
    }

    private static List<Coat> paper(boolean before) {
        Rgb dirt = Rgb.of(0x77705f);
        return List.of(Paper.laid(Rgb.of(0xf3ecd9), 21), Stains.tone(NOISE, Rgb.of(0xc19a5e), 0.03),
                FerryLetter::matBurn, Stains.edges(OUTLINE, NOISE, 9, 0.3), Stains.foxing(8, WIDE, HIGH, 34, 0.55),
                UPPER.wear(NOISE, 0.4, before ? 0.4 : 0.24, dirt), LOWER.wear(NOISE, 0.4, before ? 0.36 : 0.22, dirt),
                Stains.grime(new Noise(4), dirt, before ? 0.24 : 0.05, (x, y) -> 0.18 + 0.9 * Curve.fall(OUTLINE.inside(x, y), 20)));
    }

    /** A poor mat has browned the paper in its window, darkest along the bevel. */
    private static Rgb matBurn(double x, double y, Rgb below) {
        double d = Math.min(Math.min(x, WIDE - x), Math.min(y, HIGH - y)) - 9.5 + 0.5 * NOISE.layered(x, y, 20, 2);
        double k = 0.06 * Curve.rise(-0.6, 0.6, d) + 0.3 * Curve.bump(d, 1.1) + 0.12 * Curve.bump(d - 1, 4);
        return below.stained(Rgb.of(0xa67a42), k);
    }

    private static List<Coat> ink(View view) {
        Mask all = Mask.drawn(view, g -> Cursive.draw(g, HAND, 0, 1));
        Mask heavy = Mask.drawn(view, g -> Cursive.draw(g, HAND, HEAVY, 1));
        Rgb brown = Rgb.of(0x8a5a26);
        return List.of(new Ink(heavy.blurred(1.2), brown, 0.6, 0.3, NOISE), new Ink(all.blurred(0.45), brown, 0.4, 0.3, NOISE),
                new Ink(all, Rgb.of(0x3a2312), 0.86, 0.4, new Noise(71)),
                new Ink(heavy.blurred(0.1), Rgb.of(0x1a100a), 0.55, 0.4, new Noise(72)),
                new Ink(Mask.drawn(view, FerryLetter::cracks), Rgb.of(0xe9dcbe), 0.85, 0.2, NOISE));
    }

    private static Sheet back(View view) {
        List<Coat> coats = new ArrayList<>(paper(true));
        Mask all = Mask.drawn(view, g -> Cursive.draw(g, HAND, 0, 1.05)).blurred(0.3);
        Mask heavy = Mask.drawn(view, g -> Cursive.draw(g, HAND, HEAVY * 0.85, 1.1)).blurred(0.2);
        coats.add(new Ink(heavy.blurred(1.3), Rgb.of(0x8a5a26), 0.4, 0.3, NOISE));
        coats.add(new Ink(all, Rgb.of(0x85602f), 0.42, 0.5, NOISE));
        coats.add(new Ink(heavy, Rgb.of(0x5a3817), 0.68, 0.5, new Noise(73)));
        coats.add(new Ink(Mask.drawn(view, FerryLetter::cracks), Rgb.of(0xe9dcbe), 0.6, 0.2, NOISE));
        List<Relief> turned = reliefs(true).stream().map(r -> (Relief) (x, y) -> -r.at(x, y)).toList();
        return new Sheet(OUTLINE, List.of(T1), turned, coats, Rgb.of(0xf2ead6));
    }

    private static List<Relief> reliefs(boolean before) {
        double left = before ? 1 : 0.7;
        return List.of(Relief.tooth(NOISE, 0.008), (x, y) -> left * (UPPER.at(x, y) + LOWER.at(x, y)),
                Relief.cockling(NOISE, before ? 0.5 : 0.3, 55, (x, y) -> 1));
    }

    /** Where the pen pressed hardest the ink has eaten through: short broken lines along the stroke. */
    private static void cracks(Graphics2D g) {
        Random chance = new Random(90);
        Path2D crack = new Path2D.Double();
        int left = 0;
        for (Cursive.Mark m : HAND) {
            if (m.width() < HEAVY * 1.08) {
                left = 0;
            } else if (left > 0) {
                crack.lineTo(m.x2() + (chance.nextDouble() - 0.5) * 0.16, m.y2());
                left--;
            } else if (chance.nextInt(26) == 0) {
                crack.moveTo(m.x1(), m.y1());
                left = 4 + chance.nextInt(9);
            }
        }
        g.setStroke(new BasicStroke(0.075f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL));
        g.draw(crack);
    }

    private static List<Cursive.Mark> written() {
        Cursive hand = new Cursive(1871);
        double size = 2.5;
        hand.line(118, 27, 64, size);
        hand.line(134, 37, 46, size);
        hand.word(22, 53, 4, size, 1.9);
        hand.word(40, 53, 7, size, 1.5);
        double y = 66;
        for (int i = 0; i < 13; i++) {
            double indent = i == 0 || i == 7 ? 14 : 0;
            hand.line(21 + indent, y, 160 - indent - (i == 6 ? 62 : i == 12 ? 84 : 0), size);
            y += 10.4;
        }
        hand.line(96, y + 3, 46, size);
        hand.word(108, y + 17, 5, size * 1.25, 2);
        hand.word(133, y + 17, 8, size * 1.25, 1.9);
        hand.flourish(3.4, new double[] {176, y + 16}, new double[] {168, y + 22}, new double[] {120, y + 23},
                new double[] {112, y + 27}, new double[] {140, y + 27.5}, new double[] {182, y + 23});
        return hand.marks();
    }
}
