package org.benchleaf.compose.chart;

import org.benchleaf.compose.part.GlossaryTerms;
import org.benchleaf.model.TermDrawing;
import org.benchleaf.page.Chart;
import org.benchleaf.words.Words;

/** Drawings of words of the trade for the glossary: what one sees, in the style of the drawings of steps, and not to scale. */
public final class TermDrawings {

    private static final String ABOVE = "above";
    private static final String SIDE = "side";
    private static final String SECTION = "section";
    /** Where words stand beside a section. */
    private static final double NAMES = 150;

    /** Spots of foxing: where each lies, and how large it is. */
    private static final int[][] SPOTS = {{60, 30, 4}, {92, 62, 6}, {128, 24, 3}, {150, 84, 5}, {176, 48, 4}, {70, 92, 3}, {112, 98, 4},
        {196, 90, 3}, {44, 66, 3}};

    private final Words words;
    private final DrawingPen pen = new DrawingPen();

    public TermDrawings(Words words) {
        this.words = words;
    }

    /**
     * One drawing, with the words of its content for those who do not see it.
     *
     * @param id of the term
     * @param term in the language of the page
     */
    public Chart.Drawing make(String id, String term, TermDrawing drawing) {
        String view = draw(drawing);
        return pen.drawing(GlossaryTerms.anchor(id) + "-drawing", words.say("drawing.term-title", "term", term),
                words.say(key(drawing)), words.say("drawing.view-" + view));
    }

    /** The key of the words that tell what is drawn. */
    static String key(TermDrawing drawing) {
        return "drawing.term-" + drawing.word().replace(' ', '-');
    }

    /** Draws it and returns from where one looks at it. */
    private String draw(TermDrawing drawing) {
        return switch (drawing) {
            case BLEEDING -> bleeding();
            case BUCKLING -> waves("M4 34q29 -28 58 0t58 0t58 0t58 0");
            case COCKLING -> waves("M4 34q7 -10 14 0t14 0t14 0t14 0t14 0t14 0t14 0t14 0t14 0t14 0t14 0t14 0t14 0t14 0t14 0t14 0t8 -2");
            case CARRIER -> carrier();
            case CHAMBER -> chamber();
            case FEATHERED_EDGE -> edges();
            case FOXING -> foxing();
            case GRAIN -> grain();
            case HALO -> halo();
            case INFILL -> infill();
            case LAP -> lap();
            case MAT_BURN -> matBurn();
            case RAKING_LIGHT -> rakingLight();
            case SPLIT -> split();
            case STACK -> stack();
            case TEAR -> tear();
            case TIDELINE -> tideline();
            case TWO_FACES -> twoFaces();
        };
    }

    private String label(String key) {
        return words.say("drawing.label-" + key);
    }

    private String bleeding() {
        pen.path("run", "M142 22q-8 20 2 38q18 8 34 -2q22 6 34 -14q4 -20 -10 -28q-30 -10 -60 6Z");
        pen.path("sheet", "M24 26q14 -10 22 6t22 6t22 -8").path("sheet", "M150 26q14 -10 22 6t22 6t22 -8");
        pen.path("sheet", "M24 50q14 -10 22 6t22 6t22 -8").path("sheet", "M150 50q14 -10 22 6t22 6t22 -8");
        pen.label(58, 90, label("sharp")).label(184, 90, label("run"));
        return ABOVE;
    }

    private String waves(String course) {
        pen.path("sheet", course).line("part", 4, 60, 236, 60);
        return SIDE;
    }

    private String carrier() {
        pen.path("web", "M6 26q26 34 56 34H178q30 0 56 -34");
        pen.path("sheet", "M62 54H178");
        pen.line("fine", 120, 24, 120, 48).label(120, 18, words.say("drawing.sheet"));
        pen.label(120, 86, label("carrier")).arrow(6, 60, 6, 30).arrow(234, 60, 234, 30);
        return SIDE;
    }

    private String chamber() {
        pen.path("part", "M4 16H136").path("part", "M10 16V96H130V16");
        pen.line("sheet", 22, 46, 118, 46).line("web", 14, 56, 126, 56).hatched(14, 76, 112, 18);
        named(label("lid"), 20);
        named(words.say("drawing.sheet"), 50);
        named(label("lets-vapour-through"), 64);
        named(label("damp-blotter"), 100);
        return SECTION;
    }

    private void named(String name, double y) {
        pen.words(NAMES, y, name);
    }

    private String edges() {
        pen.path("tissue", "M10 8H100V58H10Z");
        pen.path("tissue", "M140 8H230V54l-6 4l-6 -5l-6 6l-6 -5l-6 5l-6 -6l-6 5l-6 -4l-6 5l-6 -6l-6 6l-6 -5l-6 4l-6 -5l-6 6Z");
        pen.path("fibre", "M144 52v18M151 54l-3 18M159 52l4 20M168 54v16M176 54l-4 19M185 52l3 19M194 54v17M203 53l-4 18"
                + "M212 54l3 17M221 53v18");
        pen.label(55, 92, label("cut")).label(185, 92, label("torn"));
        return ABOVE;
    }

    private String foxing() {
        sheet();
        for (int[] spot : SPOTS) {
            pen.path("spot", circle(spot[0], spot[1], spot[2]));
        }
        return ABOVE;
    }

    /** The sheet from above, with room for what is on it. */
    private void sheet() {
        pen.box("plate", 20, 6, 200, 108);
    }

    private static String circle(int x, int y, int radius) {
        return "M" + (x - radius) + " " + y + "a" + radius + " " + radius + " 0 1 0 " + 2 * radius + " 0a" + radius + " " + radius
                + " 0 1 0 -" + 2 * radius + " 0Z";
    }

    private String grain() {
        pen.path("dry", "M38 22H162V122H38Z").box("plate", 40, 34, 120, 76);
        for (int y = 44; y < 110; y += 11) {
            pen.line("fine", 48, y, 152, y);
        }
        pen.label(100, 14, label("grain")).arrow(100, 26, 128, 26).arrow(100, 26, 72, 26);
        pen.arrow(176, 72, 176, 22).arrow(176, 72, 176, 122);
        pen.words(188, 60, label("grows"));
        return ABOVE;
    }

    private String halo() {
        pen.path("halo", "M20 60q30 -60 60 -10t60 0t76 -20").path("sheet", "M20 60q30 -60 60 -10t60 0t76 -20").below(90);
        pen.words(20, 104, label("ink"));
        pen.line("fine", 40, 92, 50, 44).line("fine", 150, 92, 150, 68).words(130, 104, label("halo"));
        return ABOVE;
    }

    private String infill() {
        pen.line("sheet", 4, 46, 84, 46).line("sheet", 156, 46, 236, 46);
        pen.path("tissue", "M76 42L90 40H150L164 42L156 48H84Z");
        pen.label(120, 22, label("infill")).line("fine", 120, 26, 120, 40);
        pen.label(40, 70, words.say("drawing.sheet"));
        return SECTION;
    }

    private String lap() {
        pen.path("part", "M1 20H236V104H1");
        pen.path("torn", "M20 40l8 -2l8 2l8 -2l8 2l8 -2l8 2l8 -2l8 2l8 -2l8 2l8 -2l8 2l8 -2l8 2l8 -2l8 2l8 -2l8 2l8 -2l8 2v44H20Z");
        pen.path("tear", "M1 62l8 -4l8 6l10 -5l10 5l12 -6l12 6l12 -5l12 5l12 -4l14 4l14 -4l14 2");
        pen.length(129, 180, 122, label("lap"));
        return ABOVE;
    }

    private String matBurn() {
        sheet();
        pen.box("damp", 44, 20, 152, 80).box("plate", 56, 30, 128, 60);
        pen.label(120, 64, label("window"));
        return ABOVE;
    }

    private String rakingLight() {
        pen.path("part", "M6 46l16 -10l8 12l-16 10Z");
        pen.path("spray", "M30 46L110 58M30 48L160 66M30 44L100 50");
        pen.path("sheet", "M40 72H96q14 -22 28 0H236");
        pen.path("spot", "M124 72q-3 -8 -8 -12q24 6 44 12Z");
        pen.label(60, 28, label("lamp")).label(176, 50, label("shadow")).below(80);
        return SIDE;
    }

    private String split() {
        sheet();
        pen.path("dry", "M120 6V114").path("tear", "M120 60l-3 8l5 8l-4 8l5 8l-4 8l3 14");
        pen.words(130, 30, label("fold"));
        return ABOVE;
    }

    private String stack() {
        pen.box("solid", 34, 4, 72, 20);
        named(label("weight"), 18);
        pen.box("plate", 6, 28, 128, 10);
        named(label("board"), 38);
        pen.box("damp", 6, 44, 128, 8);
        named(label("felt"), 56);
        pen.hatched(6, 58, 128, 10);
        named(words.say("drawing.blotter"), 74);
        pen.line("web", 6, 76, 134, 76);
        named(label("web"), 92);
        pen.line("sheet", 14, 84, 126, 84);
        named(words.say("drawing.sheet"), 110);
        pen.line("fine", 128, 84, NAMES - 4, 104);
        pen.line("web", 6, 92, 134, 92).hatched(6, 98, 128, 10).box("damp", 6, 114, 128, 8).box("plate", 6, 126, 128, 10);
        return SECTION;
    }

    private String tear() {
        sheet();
        pen.path("tear", "M220 58l-10 -5l-10 8l-12 -6l-12 7l-12 -6l-14 6l-12 -5");
        return ABOVE;
    }

    private String tideline() {
        sheet();
        pen.path("tissue", "M20 66c24 -16 44 8 68 -6s48 -12 70 4s40 -10 62 2V114H20Z");
        pen.path("tear", "M20 66c24 -16 44 8 68 -6s48 -12 70 4s40 -10 62 2");
        pen.label(120, 36, label("dry")).label(120, 96, label("wet"));
        return ABOVE;
    }

    private String twoFaces() {
        pen.path("part", "M20 6H220V70L176 114H20Z").path("tissue", "M220 70H176V114Z").below(116);
        pen.label(100, 62, label("recto")).label(214, 112, label("verso")).line("fine", 206, 100, 192, 86);
        return ABOVE;
    }
}
