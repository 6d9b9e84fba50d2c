package org.benchleaf.compose.chart;

import java.util.Optional;
import org.benchleaf.model.Part;
import org.benchleaf.page.Chart;

/** How far the sprayer is held from the sheet, and how an evenly damp sheet looks beside one that is not. */
final class SprayDrawings {

    private final DrawnStep step;

    SprayDrawings(DrawnStep step) {
        this.step = step;
    }

    /** The distance to scale; where the case does not state it, the drawing says so. */
    Chart.Drawing distance(Part.Mist mist) {
        DrawingPen pen = new DrawingPen();
        double far = mist.distance().map(DrawnStep::millimetres).map(length -> DrawingPen.within(0.25 * length, 30, 150)).orElse(100.0);
        double y = 26;
        String told = mist.distance().map(step::written).orElse(step.words().say("drawing.mist-unknown"));
        sprayer(pen, y);
        pen.path("spray", "M64 " + (int) y + "L60 " + (int) (y + far) + "M64 " + (int) y + "L100 " + (int) (y + far)
                + "M64 " + (int) y + "L140 " + (int) (y + far) + "M64 " + (int) y + "L180 " + (int) (y + far));
        pen.line("sheet", 44, y + far, 196, y + far).line("part", 30, y + far + 6, 210, y + far + 6);
        pen.height(222, y, y + far);
        pen.label(190, y - 8, told);
        mist.amount().ifPresent(amount -> pen.label(120, y + far + 26,
                step.words().say("drawing.mist-amount", "amount", step.written(amount))));
        return pen.drawing(step.id("mist"), step.words().say("drawing.mist-title"), text(mist, told),
                step.words().say("drawing.mist-caption"));
    }

    private static void sprayer(DrawingPen pen, double y) {
        pen.path("part", "M20 " + (int) (y + 8) + "h20v34h-20Z");
        pen.path("part", "M26 " + (int) (y + 8) + "v-6h-8v-8h40v6h-18v8");
        pen.path("part", "M54 " + (int) (y - 3) + "l8 2");
    }

    private String text(Part.Mist mist, String told) {
        return mist.amount().map(amount -> step.words().say("drawing.mist-text", "amount", step.written(amount), "liquid",
                step.named(mist.of()), "distance", told)).orElseGet(() -> step.words().say("drawing.mist-text-unmeasured", "liquid",
                        step.named(mist.of()), "distance", told));
    }

    /** Two sheets from above: damp all over, and with dry islands. */
    Chart.Drawing wetOut(Part.Mist mist) {
        DrawingPen pen = new DrawingPen();
        pen.box("damp", 6, 6, 100, 76).box("damp", 134, 6, 100, 76);
        pen.path("dry", "M150 22c10 -12 30 -6 28 8s-34 8 -28 -8Z");
        pen.path("dry", "M190 50c14 -12 36 0 28 14s-40 2 -28 -14Z");
        pen.label(56, 102, step.words().say("drawing.wet-good")).label(184, 102, step.words().say("drawing.wet-bad"));
        Optional<String> until = step.step().until();
        return pen.drawing(step.id("wet-out"), step.words().say("drawing.wet-title"), step.words().say("drawing.wet-text",
                "liquid", step.named(mist.of())) + until.map(end -> " " + step.words().say("drawing.wet-until", "until", end)).orElse(""),
                step.words().say("drawing.wet-caption"));
    }
}
