package org.benchleaf.demo;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/** The parish map: a large lithograph with hand-coloured bounds, folded into eight panels and split along its folds. */
final class ParishMap {
    static final double WIDE = 900;
    static final double HIGH = 640;
    private static final String FOLDER = "parish-map";
    private static final Noise NOISE = new Noise(640);
    /** As large as the case says: 1.5 cm². */
    static final Outline.Loss LOST = new Outline.Loss(450, 320, 6.9);
    private static final Outline OUTLINE = new Outline(WIDE, HIGH, 1.5, NOISE,
            List.of(LOST, new Outline.Loss(898, 638, 8), new Outline.Loss(2, 320, 4)));
    /** Where the folds cross, tissue fills the lost paper; the losses at the edge are left as they are. */
    private static final Outline FILLED = new Outline(WIDE, HIGH, 1.5, NOISE, OUTLINE.losses().subList(1, 3));
    private static final List<Fold> FOLDS = List.of(new Fold(225, 0, 225, HIGH, 0.2, 1.2),
            new Fold(450, 0, 449, HIGH, -0.23, 1.2), new Fold(676, 0, 676, HIGH, 0.2, 1.2),
            new Fold(0, 320, WIDE, 319, -0.21, 1.2));
    private static final Tear T1 = Tear.from(NOISE, new double[] {449, 640}, new double[] {450, 590},
            new double[] {449.5, 540}, 1, 4);
    private static final Tear T2 = Tear.from(NOISE, new double[] {900, 319}, new double[] {860, 320},
            new double[] {826, 319}, 1, 3.2);
    private static final Tear T3 = Tear.from(NOISE, new double[] {450, 322}, new double[] {450, 350},
            new double[] {450, 386}, 1, 2.6);
    private static final Tear T4 = Tear.from(NOISE, new double[] {226, 0}, new double[] {225, 22},
            new double[] {225, 48}, 1, 2.8);
    private static final List<Tear> SPLITS = List.of(T1, T2, T3, T4);

    private ParishMap() {
    }

    static List<Picture> pictures() {
        return List.of(new Picture(FOLDER, "before-recto", n -> recto(Moment.BEFORE, n)),
                new Picture(FOLDER, "during-chamber", ParishMap::chamber),
                new Picture(FOLDER, "after-recto", n -> recto(Moment.AFTER, n)),
                new Picture(FOLDER, "detail-fold", ParishMap::detail));
    }

    static View view(int longSide) {
        return View.ofSheet(WIDE, HIGH, longSide).turned(-0.25, WIDE / 2, HIGH / 2);
    }

    private static BufferedImage recto(Moment moment, int longSide) {
        View view = view(longSide);
        return Target.beside(new Bench(view, Ground.grey(8), Light.normal()).photograph(sheet(moment, view)), view, 30);
    }

    private static BufferedImage chamber(int longSide) {
        View view = View.of(-150, -150, WIDE + 300, HIGH + 300, longSide);
        View laid = view.turned(0.4, WIDE / 2, HIGH / 2);
        Outline blotter = new Outline(WIDE + 60, HIGH + 60, 0.4, NOISE, List.of()).movedBy(-30, -30);
        Tray tray = new Tray(-95, -95, WIDE + 190, HIGH + 190, 26, blotter, Ground.grey(8), NOISE);
        BufferedImage open = new Bench(laid, tray, Light.normal()).photograph(sheet(Moment.DURING, laid));
        return new Membrane(tray, view, new Noise(88)).over(open);
    }

    private static BufferedImage detail(int longSide) {
        View view = View.of(395, 276, 120, 88, longSide).turnedOver(WIDE - 2 * (WIDE / 2 - 455));
        return Target.beside(new Bench(view, Ground.grey(8), Light.normal()).photograph(verso(view)), view, 2);
    }

    static Sheet sheet(Moment moment, View view) {
        boolean before = moment.untreated();
        List<Coat> coats = new ArrayList<>(paper(moment));
        colours(coats, view);
        coats.add(Ink.printed(Mask.drawn(view, ParishDrawing::lines), Rgb.of(0x2b2825), 5));
        for (Fold fold : FOLDS) {
            coats.add(fold.rubbed(NOISE, 1.1, before ? 0.75 : 0.55, Rgb.of(0xe6dcc4)));
            coats.add(fold.wear(NOISE, 0.8, before ? 0.42 : 0.2, Rgb.of(0x7d6a4c)));
        }
        if (moment == Moment.AFTER) {
            coats.add(ParishMap::infill);
            coats.add(Tissue.laid(view, mends(), 23, Rgb.of(0xeee4cd), 0.24));
        }
        return new Sheet(moment == Moment.AFTER ? FILLED : OUTLINE, tears(moment), reliefs(moment), coats, Rgb.of(0xf1e8d2));
    }

    private static void colours(List<Coat> coats, View view) {
        Mask bounds = Mask.stroked(view, ParishDrawing.bounds(), 7).blurred(1.4);
        Mask neighbour = Mask.stroked(view, ParishDrawing.neighbour(), 6).blurred(1.4);
        Mask water = Mask.stroked(view, ParishDrawing.river(), 9).blurred(1);
        coats.add(wash(bounds, Rgb.of(0xd98a8c), 0.62));
        coats.add(wash(neighbour, Rgb.of(0xd8b64a), 0.6));
        coats.add(wash(water, Rgb.of(0x7fa9b8), 0.6));
        coats.add(wash(Mask.filled(view, ParishDrawing.woods()).blurred(2), Rgb.of(0x9bb077), 0.5));
    }

    private static Coat wash(Mask mask, Rgb colour, double strength) {
        return (x, y, below) -> below.stained(colour, strength * mask.at(x, y) * (0.8 + 0.35 * NOISE.layered(x, y, 16, 3)));
    }

    private static List<Coat> paper(Moment moment) {
        boolean before = moment.untreated();
        Rgb dirt = Rgb.of(0x6f675a);
        return List.of(Paper.wove(before ? Rgb.of(0xece1c6) : Rgb.of(0xefe6cf), 52), Stains.edges(OUTLINE, NOISE, 14, 0.4),
                Stains.tone(NOISE, Rgb.of(0xb98f58), 0.07), Stains.foxing(64, WIDE, HIGH, 70, 0.5),
                Stains.grime(new Noise(33), dirt, before ? 0.62 : 0.24, ParishMap::outerPanel));
    }

    /** The panel that lay outermost when folded took the dirt of every table and hand. */
    private static double outerPanel(double x, double y) {
        double panel = Curve.rise(674, 678, x) * (1 - Curve.rise(317, 321, y));
        double rubbed = 0.55 + 0.5 * Curve.fall(Math.min(Math.min(x - 676, 900 - x), Math.min(y, 320 - y)), 22);
        return 0.1 + 0.95 * panel * rubbed;
    }

    private static Sheet verso(View view) {
        List<Coat> coats = new ArrayList<>(paper(Moment.AFTER));
        coats.add(new Ink(Mask.drawn(view, ParishDrawing::lines).blurred(0.5), Rgb.of(0x6a5f50), 0.24, 0.2, NOISE));
        for (Fold fold : FOLDS) {
            coats.add(fold.wear(NOISE, 0.5, 0.34, Rgb.of(0x7d6a4c)));
        }
        coats.add(ParishMap::infill);
        coats.add(Tissue.laid(view, mends(), 23, Rgb.of(0xfaf4e4), 0.5));
        return new Sheet(FILLED, tears(Moment.AFTER), List.of(Relief.tooth(NOISE, 0.005),
                (x, y) -> -0.25 * FOLDS.get(1).at(x, y) - 0.25 * FOLDS.get(3).at(x, y)), coats, Rgb.of(0xf1e8d2));
    }

    private static Rgb infill(double x, double y, Rgb below) {
        double lost = Curve.rise(-0.15, 0.15, -OUTLINE.inside(x, y));
        double fibres = 0.05 * NOISE.ridges(x, y, 1.6) + 0.05 * NOISE.ridges(y + 70, x, 1.2);
        double shade = 0.12 * Curve.bump(OUTLINE.inside(x, y), 0.35);
        return below.times(1 - shade).towards(Rgb.of(0xcdbd9c).times(0.96 + fibres), lost);
    }

    static List<Tissue.Strip> mends() {
        return Tissue.over(SPLITS, new Tissue.Lay(10, 8, 60));
    }

    private static List<Tear> tears(Moment moment) {
        return moment == Moment.AFTER ? SPLITS.stream().map(Tear::closed).toList() : SPLITS;
    }

    private static List<Relief> reliefs(Moment moment) {
        double left = switch (moment) {
            case BEFORE -> 1;
            case DURING -> 0.45;
            case AFTER -> 0.14;
        };
        List<Relief> reliefs = new ArrayList<>(List.of(Relief.tooth(NOISE, 0.014),
                Relief.cockling(NOISE, 2.6 * left, 130, (x, y) -> 1)));
        FOLDS.forEach(fold -> reliefs.add((x, y) -> left * fold.at(x, y)));
        return reliefs;
    }
}
