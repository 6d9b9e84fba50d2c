package org.benchleaf.compose.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.benchleaf.model.Part;
import org.benchleaf.page.Chart;
import org.benchleaf.words.Words;

/** What lies on the sheet under its weight, layer by layer, drawn apart so that each can be named. */
final class StackDrawing {

    private static final double LEFT = 6;
    private static final double WIDE = 104;
    private static final double NAMES = 122;

    private final DrawnStep step;

    StackDrawing(DrawnStep step) {
        this.step = step;
    }

    /** One layer: its name, its tone, how many sheets of it, how thick it is drawn. */
    private record Layer(String name, String tone, int sheets, double thick) {
    }

    /** The sheet between blotters: what is next to it, the blotters, what follows; the same on its other face. */
    Chart.Drawing between(Part.Blotters blotters, Optional<Part.Press> press) {
        List<Layer> upward = new ArrayList<>(press.map(this::layers).orElse(List.of()));
        upward.add(Math.min(1, upward.size()), blotter(blotters));
        return mirrored(upward, press);
    }

    /** The sheet under a weight without blotters of its own; what lies over it lies under it too, as it is laid out. */
    Chart.Drawing under(Part.Press press) {
        return mirrored(layers(press), Optional.of(press));
    }

    private Chart.Drawing mirrored(List<Layer> upward, Optional<Part.Press> press) {
        DrawingPen pen = new DrawingPen();
        double y = upper(pen, upward, press);
        for (Layer layer : upward) {
            y = lay(pen, layer, y + 5);
        }
        if (!upward.isEmpty()) {
            pen.words(NAMES, y, step.words().say("drawing.stack-same"));
        }
        return drawn(pen, upward, press, upward.isEmpty() ? "" : " " + step.words().say("drawing.stack-mirror"));
    }

    private Chart.Drawing drawn(DrawingPen pen, List<Layer> upward, Optional<Part.Press> press, String mirrored) {
        Words words = step.words();
        List<String> names = upward.stream().map(StackDrawing::counted).toList();
        String text = words.say("drawing.stack-text", "layers", String.join("; ", names)) + mirrored
                + press.map(weight -> " " + words.say("drawing.stack-weight", "weight", mass(weight))).orElse("");
        return pen.drawing(step.id("stack"), words.say("drawing.stack-title"), text, words.say("drawing.stack-caption"));
    }

    private Layer blotter(Part.Blotters blotters) {
        String name = blotters.blotter().map(step::named).orElse(step.words().say("drawing.blotter"));
        return new Layer(name, "hatch", blotters.layers(), 8);
    }

    /** What is next to the sheet is drawn thin, as webs are. */
    private List<Layer> layers(Part.Press press) {
        List<Layer> layers = new ArrayList<>();
        for (String id : press.between()) {
            layers.add(layers.isEmpty() ? new Layer(step.named(id), "web", 1, 3) : new Layer(step.named(id), "plate", 1, 11));
        }
        return layers;
    }

    private static String counted(Layer layer) {
        return (layer.sheets() > 1 ? layer.sheets() + " × " : "") + layer.name();
    }

    private String mass(Part.Press press) {
        return (press.weights() > 1 ? press.weights() + " × " : "") + press.mass().map(step::written).orElseGet(step.words()::notRecorded)
                + press.height().flatMap(height -> press.width().map(width ->
                ", " + step.written(height) + " × " + step.written(width))).orElse("");
    }

    /** From the weight down to the sheet; returns where the sheet lies. */
    private double upper(DrawingPen pen, List<Layer> upward, Optional<Part.Press> press) {
        double y = 4;
        if (press.isPresent()) {
            double in = press.get().height().isPresent() ? 24 : 0;
            pen.box("solid", LEFT + in, y, WIDE - 2 * in, 20);
            y += Math.max(30, 14 + DrawingPen.LINE * pen.words(NAMES, y + 14, mass(press.get())));
        }
        List<Layer> downward = new ArrayList<>(upward);
        Collections.reverse(downward);
        for (Layer layer : downward) {
            double end = lay(pen, layer, y);
            int lines = pen.words(NAMES, y + 10, counted(layer));
            pen.line("fine", LEFT + WIDE + 2, y + 5, NAMES - 4, y + 5);
            y = Math.max(end + 6, y + DrawingPen.LINE * lines + 3);
        }
        pen.line("sheet", LEFT + 8, y + 5, LEFT + WIDE - 8, y + 5).words(NAMES, y + 10, step.words().say("drawing.sheet"));
        return y + 14;
    }

    /** Every sheet of a layer; returns the height below it. */
    private static double lay(DrawingPen pen, Layer layer, double top) {
        double y = top;
        for (int i = 0; i < layer.sheets(); i++) {
            if (layer.tone().equals("hatch")) {
                pen.hatched(LEFT, y, WIDE, layer.thick());
            } else if (layer.tone().equals("web")) {
                pen.line("web", LEFT, y + 4, LEFT + WIDE, y + 4);
            } else {
                pen.box(layer.tone(), LEFT, y, WIDE, layer.thick());
            }
            y += layer.thick() + 2;
        }
        return y;
    }
}
