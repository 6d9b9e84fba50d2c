package org.benchleaf.compose.chart;

import java.util.Optional;
import org.benchleaf.model.Part;
import org.benchleaf.page.Chart;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.words.Words;

/** The tray from the side: filled to its mark, and the sheet lowered into it on its carrier. Heights are drawn in millimetres. */
final class TrayDrawings {

    private static final double LEFT = 16;
    private static final double RIGHT = 214;
    private static final double WALL = 76;
    /** How deep the liquid is drawn where nobody recorded it. */
    private static final double UNTOLD = 20;

    private final DrawnStep step;

    TrayDrawings(DrawnStep step) {
        this.step = step;
    }

    /** The liquid up to the mark, and the border that stays free around the sheet. */
    Chart.Drawing mark(Part.Bath bath, Quantity level, Quantity margin) {
        Optional<String> volume = step.volume();
        DrawingPen pen = new DrawingPen();
        double base = 26 + WALL;
        double depth = depth(level);
        double border = DrawingPen.within(0.6 * DrawnStep.millimetres(margin), 10, 70);
        String deep = step.written(level);
        String free = step.written(margin);
        volume.ifPresent(amount -> pen.label(DrawingPen.WIDTH / 2.0, 14, step.words().say("drawing.tray-volume", "volume", amount)));
        filled(pen, base, depth);
        pen.path("way", "M" + (int) RIGHT + " " + (int) (base - depth) + "l12 -6v12Z");
        pen.label(115, base - depth - 8, step.words().say("drawing.tray-mark", "depth", deep));
        pen.line("sheet", LEFT + border, base - 5, RIGHT - border, base - 5);
        pen.length(LEFT, LEFT + border, base + 12, free).label(150, base + 34, step.words().say("drawing.tray-free"));
        return pen.drawing(step.id("tray"), step.words().say("drawing.tray-title"), step.words().say("drawing.tray-text",
                "liquid", step.named(bath.of()), "depth", deep, "border", free,
                "volume", volume.orElse(step.words().notRecorded())),
                step.words().say("drawing.tray-caption"));
    }

    /** One edge goes in first; the carrier reaches beyond the sheet on every side. */
    Chart.Drawing lowering(Part.Bath bath, Part.Support support) {
        DrawingPen pen = new DrawingPen();
        double base = 150;
        filled(pen, base, bath.depth().map(TrayDrawings::depth).orElse(UNTOLD));
        slope(pen, base, support);
        pen.arrow(228, 40, 228, 76);
        pen.words(4, 14, step.named(support.under()));
        pen.line("fine", 100, 24, 150, 68);
        pen.label(80, 66, step.words().say("drawing.sheet")).line("fine", 98, 70, 118, 92);
        support.margin().ifPresent(margin -> pen.label(200, 26, "+ " + step.written(margin)));
        return pen.drawing(step.id("lowering"), step.words().say("drawing.lowering-title"), text(support),
                step.words().say("drawing.lowering-caption"));
    }

    /** From the side: the wet sheet on its carrier, and one that hangs by its corner. */
    Chart.Drawing lifted(Part.Support support) {
        Words words = step.words();
        DrawingPen pen = new DrawingPen();
        pen.words(2, 14, words.say("drawing.lifted-good"));
        pen.path("part", "M20 40q30 24 56 24h88q26 0 56 -24").path("sheet", "M76 59h88");
        pen.arrow(10, 66, 10, 34).arrow(230, 66, 230, 34);
        pen.words(2, 104, words.say("drawing.lifted-bad"));
        DrawnThing.TWEEZERS.draw(pen, 30, 112, 1);
        pen.path("sheet", "M36 138q8 34 52 36q40 2 72 -8").path("tear", "M37 146l6 -2l-2 6l7 -1l-2 6l7 -1").below(184);
        pen.path("spray", "M90 178v12M120 176v12M146 172v12");
        return pen.below(194).drawing(step.id("lifted"), words.say("drawing.lifted-title"), words.say("drawing.lifted-text",
                "carrier", step.named(support.under())), words.say("drawing.lifted-caption"));
    }

    private void slope(DrawingPen pen, double base, Part.Support support) {
        double share = support.margin().map(DrawnStep::millimetres).map(margin -> DrawingPen.within(0.0025 * margin, 0.03, 0.2))
                .orElse(0.0);
        double x = 40;
        double y = base - 6;
        double across = 160;
        double up = -104;
        pen.line("part", x, y, x + across, y + up);
        if (support.between().isPresent()) {
            pen.line("web", x - 2, y - 4, x + across - 2, y + up - 4);
        }
        pen.line("sheet", x - 4 + share * across, y - 8 + share * up, x - 4 + (1 - share) * across, y - 8 + (1 - share) * up);
    }

    private String text(Part.Support support) {
        Words words = step.words();
        return words.count("drawing.lowering-people", step.step().people()) + " "
                + words.say("drawing.lowering-text", "carrier", step.named(support.under()))
                + support.between().map(web -> " " + words.say("drawing.lowering-web", "web", step.named(web))).orElse("")
                + support.margin().map(margin -> " " + words.say("drawing.lowering-margin", "margin", step.written(margin))).orElse("");
    }

    private static double depth(Quantity level) {
        return DrawingPen.within(DrawnStep.millimetres(level), 6, WALL - 18);
    }

    /** Walls, bottom, and the liquid between them. */
    private static void filled(DrawingPen pen, double base, double depth) {
        pen.box("liquid", LEFT, base - depth, RIGHT - LEFT, depth);
        pen.line("liquid", LEFT, base - depth, RIGHT, base - depth);
        pen.path("part", "M" + (int) LEFT + " " + (int) (base - WALL) + "V" + (int) base + "H" + (int) RIGHT + "V" + (int) (base - WALL));
    }
}
