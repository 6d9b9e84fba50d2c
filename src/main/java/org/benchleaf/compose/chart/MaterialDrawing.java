package org.benchleaf.compose.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.model.Material;
import org.benchleaf.page.DrawingRow;
import org.benchleaf.page.Paths;
import org.benchleaf.words.NumberText;
import org.benchleaf.words.Words;

/** What a material of the studio looks like by its kind, with the figures that tell it from others of the kind. */
public final class MaterialDrawing {

    private static final int TIMES = 2;
    private static final double FIGURES = TIMES * DrawnThing.FIELD + 12;

    private final Sheet sheet;

    public MaterialDrawing(Sheet sheet) {
        this.sheet = sheet;
    }

    /** The drawing; empty where the table of shapes has no row for it. */
    public Optional<DrawingRow> make(Material material) {
        return DrawnThing.called(material.name(), material.kind(), sheet.library().reference()).map(thing -> drawn(material, thing));
    }

    private DrawingRow drawn(Material material, DrawnThing thing) {
        Words words = sheet.words();
        DrawingPen pen = new DrawingPen();
        thing.draw(pen, 0, 0, TIMES);
        List<String> figures = figures(material);
        double y = 30;
        for (String figure : figures) {
            y += DrawingPen.LINE * pen.words(FIGURES, y, figure) + 4;
        }
        String text = words.say("drawing.thing-" + thing.word().replace(' ', '-'))
                + (figures.isEmpty() ? "." : ": " + String.join("; ", figures) + ".");
        return new DrawingRow(List.of(pen.drawing(Paths.slug(material.id()) + "-drawing",
                words.say("drawing.thing-title", "material", sheet.library().phrases().of(material.name())), text,
                words.say("drawing.thing-caption"))));
    }

    private List<String> figures(Material material) {
        NumberText numbers = sheet.numbers();
        List<String> figures = new ArrayList<>();
        material.strength().ifPresent(value -> figures.add(numbers.written(value).text()));
        material.grammage().ifPresent(value -> figures.add(numbers.written(value).text()));
        material.height().ifPresent(height -> material.width().ifPresent(width -> figures.add(sheet.words().say("size",
                "height", numbers.written(height).text(), "width", numbers.written(width).text()))));
        material.ph().ifPresent(value -> figures.add(sheet.words().say("materials.ph") + " " + numbers.written(value).text()));
        return figures;
    }
}
