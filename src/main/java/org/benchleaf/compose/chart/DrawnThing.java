package org.benchleaf.compose.chart;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.model.Reference;
import org.benchleaf.model.ThingShape;

/** A thing of the bench in a few strokes, in a field of its own, so that it can be drawn anywhere and larger. */
enum DrawnThing {
    BALANCE(of("tissue", 6, 16, "h28v4h-28Z"), of("part", 3, 22, "h34v11h-34Z"), of("fine", 12, 28, "h16"), of("fine", 20, 20, "v2")),
    BEAKER(of("tissue", 10, 18, "h20v16h-20Z"), of("part", 8, 4, "l2 3v27h20v-30"), of("fine", 24, 14, "h6m-4 6h4m-6 6h6")),
    BLOTTER(of("part", 4, 10, "h32v16h-32Z"), of("fine", 6, 26, "l9 -16m-1 16l9 -16m-1 16l9 -16")),
    BOARD(of("tissue", 2, 26, "l9 -16h26l-9 16Z"), of("part", 2, 26, "h26l9 -16v3l-9 16h-26v-3m26 0v3")),
    BOTTLE(of("tissue", 11, 20, "h18v14h-18Z"), of("part", 16, 3, "h8v8l5 5v18h-18v-18l5 -5Z"), of("part", 15, 3, "h10")),
    BRUSH(of("part", 18, 1, "h4v13h-4Z"), of("part", 10, 14, "h20v5h-20Z"), of("tissue", 11, 19, "h18l-2 14h-14Z"),
            of("fine", 15, 20, "v12m5 -12v12m5 -12v12")),
    ERASER(of("tissue", 4, 16, "h22v13h-22Z"), of("part", 4, 16, "l8 -7h22l-8 7m8 -7v13l-8 7v-13")),
    FELT(of("wax", 4, 14, "q4 -5 8 0t8 0t8 0t8 0v12q-4 5 -8 0t-8 0t-8 0t-8 0Z")),
    FILM(of("part", 4, 28, "l8 -18h24l-8 18Z"), of("fine", 14, 24, "l4 -9m4 9l4 -9")),
    GLOVES(of("part", 13, 34, "v-12l-6 -6q0 -4 4 -2l4 4v-13q2 -3 4 0v10v-13q2 -3 4 0v13v-11q2 -3 4 0v12v-7q2 -3 4 0v25Z")),
    GOGGLES(of("tissue", 4, 12, "h32v10q-7 7 -13 0l-3 -4l-3 4q-7 7 -13 0Z"), of("part", 4, 14, "l-3 4m35 -4l3 4")),
    HOOD(of("part", 4, 8, "h32v26h-32Z"), of("fine", 4, 20, "h32"), of("part", 16, 8, "v-6h8v6")),
    JAR(of("spray", 11, 22, "h18m-18 5h18m-18 5h18"), of("part", 11, 9, "v25h18v-25"), of("part", 9, 3, "h22v6h-22Z")),
    KNIFE(of("part", 4, 32, "l18 -18l4 4l-18 18Z"), of("tissue", 22, 14, "l10 -12q4 8 -6 16Z")),
    METER(of("part", 3, 6, "h22v22h-22Z"), of("tissue", 7, 10, "h14v7h-14Z"), of("part", 25, 12, "q9 0 9 8v14")),
    PAPER(of("part", 8, 3, "h17l7 7v24h-24Z"), of("part", 25, 3, "v7h7")),
    PIPETTE(of("part", 18, 2, "h4v26l-2 8l-2 -8Z"), of("fine", 18, 9, "h4m-4 6h4m-4 6h4")),
    RESPIRATOR(of("tissue", 7, 14, "q13 -10 26 0v8q-13 14 -26 0Z"), of("part", 16, 18, "h8v7h-8Z"), of("fine", 7, 16, "l-6 -6m32 6l6 -6")),
    SPATULA(of("part", 3, 32, "l16 -16l4 4l-16 16Z"), of("tissue", 19, 16, "q8 -14 18 -14q0 10 -14 18Z")),
    SPONGE(of("wax", 4, 14, "q16 -5 32 0v14q-16 5 -32 0Z"), of("fine", 10, 18, "h2m6 4h2m6 -3h2m-16 8h2m8 1h2m4 -4h2")),
    SPRAYER(of("part", 14, 15, "h16v19h-16Z"), of("part", 19, 15, "v-5h-7v-6h18v3h-5v8"), of("spray", 10, 6, "l-8 -4m8 5h-9m9 2l-8 4")),
    STRIP(of("part", 16, 2, "h8v32h-8Z"), of("spot", 16, 22, "h8v12h-8Z")),
    TISSUE(of("tissue", 4, 11, "l4 -2l4 2l4 -2l4 2l4 -2l4 2l4 -2l4 2v17l-4 2l-4 -2l-4 2l-4 -2l-4 2l-4 -2l-4 2l-4 -2Z"),
            of("fibre", 9, 6, "v6m9 -6v6m10 -6v6m-19 15v6m9 -6v6m10 -6v6")),
    TRAY(of("tissue", 3, 20, "h34v12h-34Z"), of("part", 1, 12, "l2 20h34l2 -20")),
    TWEEZERS(of("part", 34, 4, "l-30 20m30 -20l-26 24")),
    VACUUM_CLEANER(of("part", 4, 22, "q0 -8 8 -8h10v16h-18Z"), of("part", 22, 18, "q10 0 10 -14l4 -2"),
            of("part", 7, 30, "v3h3v-3m6 0v3h3v-3")),
    WEB(of("web", 4, 10, "h32v20h-32Z"), of("fine", 4, 15, "h32m-32 5h32m-32 5h32m-26 -15v20m6 -20v20m7 -20v20m7 -20v20")),
    WEIGHT(of("spot", 9, 13, "h22l4 21h-30Z"), of("part", 16, 13, "v-8h8v8"));

    /** Width and height of the field of each. */
    static final int FIELD = 40;

    /** The numbers of a course, to make it larger. */
    private static final Pattern NUMBER = Pattern.compile("-?\\d++");

    private final List<Stroke> strokes;

    DrawnThing(Stroke... strokes) {
        this.strokes = List.of(strokes);
    }

    /** One line or ground: where it begins, and its course from there. */
    private record Stroke(String tone, int x, int y, String course) {
    }

    private static Stroke of(String tone, int x, int y, String course) {
        return new Stroke(tone, x, y, course);
    }

    /** As the table of shapes writes it. */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** What a thing of that name and kind looks like; empty if no row of the table tells. */
    static Optional<DrawnThing> called(String name, String kind, Reference reference) {
        return reference.shapes().stream().filter(row -> row.fits(name, kind)).map(ThingShape::shape).findFirst()
                .flatMap(DrawnThing::of);
    }

    /** What a tool or vessel of that name looks like; empty if no row of the table tells. */
    static Optional<DrawnThing> ofTool(String name, Reference reference) {
        return called(name, "tool", reference);
    }

    /** The thing that the table of shapes writes with that word. */
    static Optional<DrawnThing> of(String word) {
        return Stream.of(values()).filter(thing -> thing.word().equals(word)).findFirst();
    }

    /**
     * Draws it.
     *
     * @param x of the left edge of its field
     * @param y of the upper edge of its field
     * @param times how many times larger than its field
     */
    void draw(DrawingPen pen, int x, int y, int times) {
        strokes.forEach(stroke -> pen.path(stroke.tone(), "M" + (x + times * stroke.x()) + " " + (y + times * stroke.y())
                + NUMBER.matcher(stroke.course()).replaceAll(number -> String.valueOf(times * Integer.parseInt(number.group())))));
        pen.below(y + (double) times * FIELD);
    }
}
