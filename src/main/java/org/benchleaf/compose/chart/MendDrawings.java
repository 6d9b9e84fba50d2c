package org.benchleaf.compose.chart;

import java.util.Optional;
import java.util.Set;
import org.benchleaf.model.Part;
import org.benchleaf.page.Chart;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.words.WholeSentence;
import org.benchleaf.words.Words;

/** Torn tissue over a tear from the back, to scale; a patch over a loss; and how a good mend lies beside a bad one. */
final class MendDrawings {

    private static final double MIDDLE = 74;
    /** Directions of the fibres that say how they lie to the tear. */
    private static final Set<String> ACROSS = Set.of("across the tear", "across the fold");

    private final DrawnStep step;

    MendDrawings(DrawnStep step) {
        this.step = step;
    }

    /** The end of a tear with the last piece of tissue: its width, its length, how far it reaches beyond the tear. */
    Chart.Drawing bridge(Part.Mend mend, Quantity strip, Quantity overlap) {
        DrawingPen pen = new DrawingPen();
        double scale = scale(mend, strip, overlap);
        double lap = scale * DrawnStep.millimetres(overlap);
        double half = scale * DrawnStep.millimetres(strip) / 2;
        double end = 196;
        double begin = mend.piece().map(piece -> end - scale * DrawnStep.millimetres(piece)).orElse(4.0);
        pen.path("part", "M1 " + 26 + "H236V" + 124 + "H1");
        tissue(pen, begin, end, half, mend.grain().filter(ACROSS::contains).isPresent());
        pen.path("tear", tear(end - lap));
        pen.height(216, MIDDLE - half, MIDDLE + half);
        pen.label(190, 18, step.words().say("drawing.mend-wide", "strip", step.written(strip)));
        pen.words(2, 18, step.words().say("drawing.mend-tear"));
        pen.length(end - lap, end, 134, step.words().say("drawing.mend-lap", "lap", step.written(overlap)));
        mend.piece().ifPresent(piece -> pen.length(begin, end, 168, step.words().say("drawing.mend-piece", "piece", step.written(piece))));
        return pen.drawing(step.id("bridge"), step.words().say("drawing.mend-title"), text(mend, strip, overlap),
                step.words().say("drawing.mend-caption"));
    }

    /** A patch of tissue that reaches beyond the loss on every side. */
    Chart.Drawing patch(Part.Mend mend, Quantity overlap) {
        DrawingPen pen = new DrawingPen();
        double lap = DrawingPen.within(4 * DrawnStep.millimetres(overlap), 6, 34);
        pen.path("part", "M1 4H236V128H1Z");
        pen.path("torn", "M" + (int) (80 - lap) + " " + (int) (40 - lap) + "h" + (int) (80 + 2 * lap) + "v" + (int) (50 + 2 * lap)
                + "h-" + (int) (80 + 2 * lap) + "Z");
        pen.path("tear", "M80 46l16 -6l22 4l24 -5l18 9l-4 22l4 18l-28 2l-20 -3l-30 4l-2 -24Z");
        pen.length(160, 160 + lap, 138, step.written(overlap));
        return pen.drawing(step.id("bridge"), step.words().say("drawing.patch-title"), step.words().say("drawing.patch-text",
                "tissue", step.named(mend.tissue()), "lap", step.written(overlap)), step.words().say("drawing.patch-caption"));
    }

    /** From the side: the strip that lies without a step, and the one that has to come off again. */
    Chart.Drawing result(Part.Mend mend) {
        DrawingPen pen = new DrawingPen();
        pen.words(2, 14, step.words().say("drawing.result-good"));
        pen.line("sheet", 4, 46, 119, 46).line("sheet", 121, 46, 236, 46);
        pen.path("tissue", "M60 42L76 37H164L180 42Z");
        pen.words(2, 80, step.words().say("drawing.result-bad"));
        pen.line("sheet", 4, 122, 126, 122).line("sheet", 118, 115, 236, 115);
        pen.path("tissue", "M60 118L76 113H112L126 107H160L190 92L192 95L164 111H130Z");
        String see = step.step().see().map(seen -> " " + step.words().say("drawing.result-see", "see", WholeSentence.of(seen))).orElse("");
        return pen.drawing(step.id("result"), step.words().say("drawing.result-title"), step.words().say("drawing.result-text") + see,
                step.words().say("drawing.result-caption"));
    }

    /** Units a millimetre, as large as the room lets strip, lap and piece be. */
    private static double scale(Part.Mend mend, Quantity strip, Quantity lap) {
        double piece = mend.piece().map(DrawnStep::millimetres).orElse(40.0);
        return Math.min(190 / piece, Math.min(60 / DrawnStep.millimetres(strip),
                70 / Math.max(1, DrawnStep.millimetres(lap))));
    }

    /** Torn edges with fibres that reach beyond them where they run across the tear. */
    private static void tissue(DrawingPen pen, double begin, double end, double half, boolean across) {
        StringBuilder edge = new StringBuilder("M" + (int) begin + " " + (int) (MIDDLE - half));
        StringBuilder back = new StringBuilder();
        StringBuilder fibres = new StringBuilder();
        for (double x = begin; x + 8 <= end; x += 8) {
            edge.append("l4 -2l4 2");
            back.append("l-4 2l-4 -2");
            fibres.append('M').append((int) (x + 4)).append(' ').append((int) (MIDDLE - half - 5)).append('v')
                    .append((int) (2 * half + 10));
        }
        pen.path("torn", edge + "v" + (int) (2 * half) + back + "Z");
        if (across) {
            pen.path("fibre", fibres.toString());
        }
    }

    /** A jagged line from the edge of the sheet to the end of the tear. */
    private static String tear(double end) {
        StringBuilder course = new StringBuilder("M1 " + (int) MIDDLE);
        for (double x = 1; x + 12 <= end; x += 12) {
            course.append("l6 -4l6 4");
        }
        return course.toString() + "H" + (int) end;
    }

    private String text(Part.Mend mend, Quantity strip, Quantity lap) {
        Words words = step.words();
        Optional<String> piece = mend.piece().map(longest -> words.say("drawing.mend-text-piece", "piece", step.written(longest)));
        return words.say("drawing.mend-text", "tissue", step.named(mend.tissue()), "strip", step.written(strip),
                "lap", step.written(lap)) + piece.map(told -> " " + told).orElse("")
                + mend.grain().map(grain -> " "
                        + words.say("drawing.mend-text-grain", "grain", words.term("fibres-run", grain))).orElse("");
    }
}
