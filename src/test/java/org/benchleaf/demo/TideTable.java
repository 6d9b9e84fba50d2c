package org.benchleaf.demo;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The tide table: a brittle letterpress broadside of 1893 with a tideline, three tears and a violet stamp. */
final class TideTable {
    static final double WIDE = 298;
    static final double HIGH = 412;
    private static final String FOLDER = "tide-table";
    private static final Noise NOISE = new Noise(1893);
    private static final Outline OUTLINE = new Outline(WIDE, HIGH, 1.1, NOISE,
            List.of(new Outline.Loss(2, 409, 5), new Outline.Loss(297, 2, 3.5), new Outline.Loss(298, 330, 2.4)));
    private static final Tear T1 = Tear.from(NOISE, new double[] {298, 152}, new double[] {262, 166},
            new double[] {237, 146}, 1, 2.6);
    private static final Tear T2 = Tear.from(NOISE, new double[] {118, 412}, new double[] {129, 394},
            new double[] {120, 375.8}, 1, 1.9);
    private static final Tear T3 = Tear.from(NOISE, new double[] {0, 226}, new double[] {11, 230},
            new double[] {21.5, 223}, 1, 1.3);
    private static final Tissue.Lay MENDED = new Tissue.Lay(8, 5, 40);
    private static final Tideline TIDE = new Tideline(NOISE, WIDE, 296, 281, 26, 1);
    private static final Fold FOLD = new Fold(0, 207, WIDE, 205.5, -0.035, 1.6);
    private static final List<String> MONTHS = List.of("January", "February", "March", "April", "May", "June");
    private static final double TABLE_TOP = 118;
    private static final double TABLE_FOOT = 356;
    private static final double ROW = 7.1;

    private TideTable() {
    }

    static List<Picture> pictures() {
        return List.of(new Picture(FOLDER, "before-recto", n -> recto(Moment.BEFORE, n)),
                new Picture(FOLDER, "after-recto", n -> recto(Moment.AFTER, n)),
                new Picture(FOLDER, "before-raking", TideTable::raking),
                new Picture(FOLDER, "during-bath", TideTable::bath),
                new Picture(FOLDER, "during-mend", TideTable::mend));
    }

    static View view(int longSide) {
        return View.ofSheet(WIDE, HIGH, longSide).turned(0.35, WIDE / 2, HIGH / 2);
    }

    private static BufferedImage recto(Moment moment, int longSide) {
        View view = view(longSide);
        BufferedImage picture = new Bench(view, Ground.grey(5), Light.normal()).photograph(sheet(moment, view));
        return Target.beside(picture, view, 10);
    }

    private static BufferedImage raking(int longSide) {
        View view = view(longSide);
        Sheet sheet = sheet(Moment.BEFORE, view);
        BufferedImage picture = new Bench(view, Ground.grey(5), Light.rakingFromLeft()).photograph(sheet);
        return Target.beside(picture, view, 10);
    }

    private static BufferedImage bath(int longSide) {
        View view = View.of(-86, -86, WIDE + 172, HIGH + 172, longSide);
        View sheetView = view.turned(-0.6, WIDE / 2, HIGH / 2);
        Outline carrier = new Outline(WIDE + 60, HIGH + 60, 0.3, NOISE, List.of()).movedBy(-30, -30);
        Tray tray = new Tray(-56, -56, WIDE + 112, HIGH + 112, 13, carrier, Ground.grey(5), NOISE);
        BufferedImage dry = new Bench(sheetView, tray, Light.normal()).photograph(sheet(Moment.DURING, sheetView));
        return new Water(tray, view, new Noise(77), Rgb.of(0xf0dfa0), 0.42).over(dry);
    }

    private static BufferedImage mend(int longSide) {
        View view = View.of(-14, 116, 112, 80, longSide).turnedOver(WIDE);
        BufferedImage picture = new Bench(view, blotter(), Light.normal()).photograph(verso(view));
        MendingTools.onto(picture, longSide / 112.0);
        return Target.beside(picture, view, 2);
    }

    private static Ground blotter() {
        Noise felt = new Noise(9);
        return (x, y) -> Rgb.of(0xe6e4dc).times(0.9 + 0.03 * felt.layered(x, y, 1.2, 3) + 0.02 * felt.ridges(x, y, 3));
    }

    static Sheet sheet(Moment moment, View view) {
        List<Coat> coats = new ArrayList<>(paper(moment));
        coats.add(Ink.printed(Mask.drawn(view, TideTable::print), Rgb.of(0x1d1a18), 3));
        coats.add(stamp(view));
        coats.add(FOLD.wear(NOISE, 0.5, moment.untreated() ? 0.3 : 0.14, Rgb.of(0x8a6d48)));
        coats.add(Stains.grime(new Noise(31), Rgb.of(0x77705f), moment.untreated() ? 0.16 : 0.03, TideTable::handled));
        if (moment == Moment.AFTER) {
            coats.add(Tissue.laid(view, mends(), 40, Rgb.of(0xe6d9bd), 0.3));
        }
        return new Sheet(OUTLINE, tears(moment), reliefs(moment), coats, Rgb.of(0xeadfc6));
    }

    private static List<Coat> paper(Moment moment) {
        boolean before = moment.untreated();
        boolean wet = moment == Moment.DURING;
        Rgb tone = before ? Rgb.of(0xebdab4) : wet ? Rgb.of(0xdccaa2) : Rgb.of(0xe4d8bd);
        double left = before ? 1 : wet ? 0.7 : 0.42;
        return List.of(Paper.wove(tone, 11), Stains.tone(NOISE, Rgb.of(0xb98f58), 0.15 * left),
                Stains.edges(OUTLINE, NOISE, 18, 0.5 * left), TIDE.faded(left),
                Stains.foxing(61, WIDE, HIGH, 60, 0.7 * left));
    }

    private static Sheet verso(View view) {
        List<Coat> coats = new ArrayList<>(paper(Moment.AFTER));
        Mask print = Mask.drawn(view, TideTable::print).blurred(0.35);
        coats.add(new Ink(print, Rgb.of(0x6d5c44), 0.2, 0.1, NOISE));
        coats.add(Tissue.laid(view, Tissue.over(T1, MENDED), 40, Rgb.of(0xf3ead6), 0.62));
        List<Relief> flat = List.of(Relief.tooth(NOISE, 0.006));
        return new Sheet(OUTLINE, tears(Moment.AFTER), flat, coats, Rgb.of(0xeadfc6));
    }

    static List<Tissue.Strip> mends() {
        return Tissue.over(List.of(T1, T2, T3), MENDED);
    }

    private static List<Tear> tears(Moment moment) {
        return moment == Moment.AFTER ? List.of(T1.closed(), T2.closed(), T3.closed()) : List.of(T1, T2, T3);
    }

    private static List<Relief> reliefs(Moment moment) {
        Relief tooth = Relief.tooth(NOISE, 0.012);
        if (moment != Moment.BEFORE) {
            return List.of(tooth, (x, y) -> 0.25 * FOLD.at(x, y));
        }
        Relief wet = (x, y) -> 0.35 + 0.65 * Curve.rise(-70, 30, TIDE.depth(x, y));
        return List.of(tooth, FOLD, Relief.cockling(new Noise(18), 2.3, 62, wet));
    }

    /** Hands dirty a sheet at its edges and lower corners. */
    private static double handled(double x, double y) {
        return 0.3 + 0.9 * Curve.fall(OUTLINE.inside(x, y), 25);
    }

    private static void print(Graphics2D g) {
        frame(g);
        heading(g);
        table(g);
        Type small = Type.roman();
        g.fill(small.centred("Add 22 minutes for Gannet Point. Subtract 14 minutes for the Outer Mole.", WIDE / 2, 368, 3.1));
        g.fill(small.centred("Heights are in feet above the sill of the Dock. Masters of vessels sail by their own soundings.",
                WIDE / 2, 375, 2.7));
        g.fill(small.spaced(0.06).centred("Merrow & Daughters, Printers, Quay Street, Skerrow Haven", WIDE / 2, 386, 2.5));
    }

    private static void frame(Graphics2D g) {
        g.setStroke(new BasicStroke(1.1f));
        g.draw(new Rectangle2D.Double(17, 19, WIDE - 34, HIGH - 40));
        g.setStroke(new BasicStroke(0.35f));
        g.draw(new Rectangle2D.Double(19.2, 21.2, WIDE - 38.4, HIGH - 44.4));
    }

    private static void heading(Graphics2D g) {
        double c = WIDE / 2;
        g.fill(Type.roman().spaced(0.25).centred("HARBOUR OF", c, 38, 5.2));
        g.fill(Type.fat().fitted("SKERROW HAVEN", c, 58, 232, 14));
        g.fill(new Type(0.2, 0.05, 0.1, 0.9, 0.22, 0).fitted("TIDE TABLE", c, 87, 190, 20));
        g.fill(Type.roman().spaced(0.08).centred("shewing the time and height of High Water for the year 1893", c, 98, 4));
        ornament(g, c, 104.5);
    }

    private static void ornament(Graphics2D g, double x, double y) {
        g.fill(new Rectangle2D.Double(x - 70, y - 0.25, 58, 0.5));
        g.fill(new Rectangle2D.Double(x + 12, y - 0.25, 58, 0.5));
        for (int i = -1; i <= 1; i++) {
            double size = i == 0 ? 2.6 : 1.5;
            Path2D lozenge = new Path2D.Double();
            lozenge.moveTo(x + i * 6 - size, y);
            lozenge.lineTo(x + i * 6, y - size * 0.8);
            lozenge.lineTo(x + i * 6 + size, y);
            lozenge.lineTo(x + i * 6, y + size * 0.8);
            lozenge.closePath();
            g.fill(lozenge);
        }
    }

    private static void table(Graphics2D g) {
        double left = 23;
        double column = (WIDE - 46) / MONTHS.size();
        g.setStroke(new BasicStroke(0.7f));
        g.draw(new Rectangle2D.Double(left, TABLE_TOP - 7, WIDE - 46, TABLE_FOOT - TABLE_TOP + 7));
        g.setStroke(new BasicStroke(0.3f));
        g.draw(new Line2D.Double(left, TABLE_TOP + 7.2, WIDE - left, TABLE_TOP + 7.2));
        g.draw(new Line2D.Double(left, TABLE_TOP, WIDE - left, TABLE_TOP));
        for (int m = 0; m < MONTHS.size(); m++) {
            double x = left + m * column;
            if (m > 0) {
                g.draw(new Line2D.Double(x, TABLE_TOP - 7, x, TABLE_FOOT));
            }
            g.fill(Type.roman().spaced(0.05).centred(MONTHS.get(m).toUpperCase(Locale.ROOT), x + column / 2,
                    TABLE_TOP - 2, 3.4));
            month(g, m, x, column);
        }
    }

    private static void month(Graphics2D g, int month, double x, double column) {
        Type type = Type.roman();
        double[] at = {x + 6.5, x + 17.5, x + 28.8, x + column - 2};
        String[] heads = {"D.", "Morn.", "Aft.", "Ft."};
        for (int i = 0; i < 4; i++) {
            g.fill(type.right(heads[i], at[i], TABLE_TOP + 5, 2.4));
        }
        int days = List.of(31, 28, 31, 30, 31, 30).get(month);
        for (int day = 0; day < days; day++) {
            double y = TABLE_TOP + 14 + day * ROW;
            int tide = (month * 31 + day) * 49 + 252;
            g.fill(type.right(String.valueOf(day + 1), at[0], y, 2.9));
            g.fill(type.right(clock(tide), at[1], y, 2.9));
            g.fill(type.right(clock(tide + 24), at[2], y, 2.9));
            double feet = 13.5 + 3.6 * StrictMath.cos((month * 31 + day) * 2 * Math.PI / 14.77);
            g.fill(type.right(String.valueOf(Math.round(feet)), at[3], y, 2.9));
        }
    }

    private static String clock(int minutes) {
        int hour = minutes / 60 % 12;
        return (hour == 0 ? 12 : hour) + "." + String.format(Locale.ROOT, "%02d", minutes % 60);
    }

    private static Coat stamp(View view) {
        Mask mask = Mask.drawn(view, g -> {
            AffineTransform before = g.getTransform();
            g.rotate(StrictMath.toRadians(-9), 236, 366);
            g.setStroke(new BasicStroke(0.9f));
            g.draw(new Ellipse2D.Double(236 - 30, 366 - 17, 60, 34));
            g.setStroke(new BasicStroke(0.4f));
            g.draw(new Ellipse2D.Double(236 - 27.6, 366 - 14.8, 55.2, 29.6));
            g.fill(Type.plain().centred("HARBOUR OFFICE", 236, 361, 3.6));
            g.fill(Type.plain().centred("9 JAN 1893", 236, 369.4, 5));
            g.fill(Type.plain().centred("SKERROW", 236, 376, 3.4));
            g.setTransform(before);
        });
        Rgb violet = Rgb.of(0x5a2f93);
        Coat halo = new Ink(mask.blurred(0.7), violet, 0.22, 0.3, NOISE);
        Coat line = new Ink(mask, violet, 0.82, 0.45, new Noise(12));
        return (x, y, below) -> line.over(x, y, halo.over(x, y, below));
    }
}
