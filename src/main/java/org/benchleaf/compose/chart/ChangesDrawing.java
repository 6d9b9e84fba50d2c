package org.benchleaf.compose.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.model.Part;
import org.benchleaf.page.Chart;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** The clock of the blotters: each time until the next change as a bar that begins where the last one ended, to scale. */
final class ChangesDrawing {

    private static final double LEFT = 22;
    private static final double NIGHT = 60;
    private static final double ROW = 24;

    private final DrawnStep step;

    ChangesDrawing(DrawnStep step) {
        this.step = step;
    }

    Chart.Drawing make(Part.Blotters part) {
        List<Optional<Double>> minutes = part.changes().stream().map(change -> change.map(time -> time.in(Unit.MINUTE))).toList();
        DrawingPen pen = new DrawingPen();
        double scale = scale(minutes);
        double x = LEFT;
        for (int i = 0; i < minutes.size(); i++) {
            double width = minutes.get(i).map(time -> Math.max(2, time * scale)).orElse(NIGHT);
            bar(pen, i, x, Math.min(width, DrawingPen.WIDTH - x), told(part.changes().get(i)));
            x = Math.min(x + width, DrawingPen.WIDTH - NIGHT);
        }
        return pen.drawing(step.id("changes"), step.words().say("drawing.changes-title"), step.words().say("drawing.changes-text",
                "times", String.join("; ", times(part))), step.words().say("drawing.changes-caption"));
    }

    /** Units a minute, so that all known times stand beside each other with room for a night. */
    private static double scale(List<Optional<Double>> minutes) {
        double known = minutes.stream().flatMap(Optional::stream).mapToDouble(Double::doubleValue).sum();
        return known == 0 ? 0 : (DrawingPen.WIDTH - LEFT - NIGHT) / known;
    }

    private static void bar(DrawingPen pen, int i, double x, double width, String told) {
        double y = 4 + ROW * i;
        pen.words(2, y + 12, String.valueOf(i + 1));
        boolean night = width >= NIGHT && x + width >= DrawingPen.WIDTH - 1;
        if (night) {
            pen.hatched(x, y, width, 14);
        } else {
            pen.box("solid", x, y, width, 14);
        }
        if (x + width + 8 + DrawingPen.wide(told) <= DrawingPen.WIDTH) {
            pen.words(x + width + 6, y + 12, told);
        } else {
            pen.label(x - 6 - DrawingPen.wide(told) / 2, y + 12, told);
        }
    }

    private String told(Optional<Quantity> change) {
        return change.map(step::time).orElse(step.words().say("drawing.overnight"));
    }

    private List<String> times(Part.Blotters part) {
        List<String> times = new ArrayList<>();
        part.changes().forEach(change -> times.add((times.size() + 1) + ": " + told(change)));
        return times;
    }
}
