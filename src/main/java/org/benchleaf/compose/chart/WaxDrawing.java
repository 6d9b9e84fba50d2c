package org.benchleaf.compose.chart;

import org.benchleaf.model.Part;
import org.benchleaf.page.Chart;

/** What protects a medium, in section: on which faces it lies, and how far beyond the medium's edge. */
final class WaxDrawing {

    private static final double FACE = 62;

    private final DrawnStep step;

    WaxDrawing(DrawnStep step) {
        this.step = step;
    }

    Chart.Drawing make(Part.Fixing fixing, String faces) {
        DrawingPen pen = new DrawingPen();
        double beyond = fixing.beyond().map(DrawnStep::millimetres).map(length -> DrawingPen.within(6 * length, 4, 60)).orElse(0.0);
        double left = 80 - beyond;
        double right = 160 + beyond;
        pen.path("wax", dome(left, right, FACE - 4, -22));
        if (faces.equals("both")) {
            pen.path("wax", dome(left, right, FACE + 4, 22));
        }
        pen.line("sheet", 4, FACE, 236, FACE).box("solid", 80, FACE - 5, 80, 5);
        pen.words(2, 14, step.named(fixing.with()));
        pen.line("fine", 30, 18, left + 24, FACE - 14);
        fixing.beyond().ifPresent(length -> pen.length(160, right, FACE + 40, step.written(length)));
        pen.words(4, FACE + 30, step.words().say("drawing.sheet"));
        String text = step.words().say("drawing.wax-text-" + faces, "wax", step.named(fixing.with()),
                "medium", step.medium(fixing.medium()))
                + fixing.beyond().map(length -> " " + step.words().say("drawing.wax-beyond", "beyond", step.written(length))).orElse("");
        return pen.drawing(step.id("wax"), step.words().say("drawing.wax-title"), text, step.words().say("drawing.wax-caption"));
    }

    private static String dome(double left, double right, double y, double high) {
        return "M" + (int) left + " " + (int) y + "C" + (int) (left + 6) + " " + (int) (y + high) + " " + (int) (right - 6) + " "
                + (int) (y + high) + " " + (int) right + " " + (int) y + "Z";
    }
}
