package org.benchleaf.compose.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.AllBlocks;
import org.benchleaf.model.Library;
import org.benchleaf.model.ThingShape;
import org.benchleaf.page.Chart;
import org.benchleaf.page.DrawingRow;
import org.benchleaf.read.ReferenceReader;
import org.benchleaf.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Things of the bench are drawn by their name and kind, and a drawing that stands for a material tells its figures. */
class DrawnThingTest {

    private static final Pattern NUMBER = Pattern.compile("-?\\d++");
    private static final int TIMES = 3;

    @Test
    void every_row_of_the_table_has_a_drawing_and_every_drawing_a_row_or_a_place_in_the_lists() {
        Set<String> rows = ReferenceReader.shipped().shapes().stream().map(ThingShape::shape).collect(Collectors.toSet());
        assertThat(rows).isEqualTo(Stream.of(DrawnThing.values()).map(DrawnThing::word).collect(Collectors.toSet()));
        assertThat(DrawnThing.values()).allSatisfy(thing -> assertThat(Words.in("en").has("drawing.thing-"
                + thing.word().replace(' ', '-'))).as(thing.word()).isTrue());
    }

    /** Common practice, no source: what the trade calls such things. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Soft goat-hair brush                          | tool      | BRUSH
            Vinyl eraser, block and grated                | tool      | ERASER
            Vulcanised rubber sponge                      | tool      | SPONGE
            Vacuum cleaner with HEPA filter               | tool      | VACUUM_CLEANER
            Hand sprayer with a fine nozzle               | tool      | SPRAYER
            Tongs                                         | tool      | TWEEZERS
            Nitrile gloves                                | tool      | GLOVES
            Ethanol, 96 % v/v                             | liquid    | BOTTLE
            Wheat starch, precipitated                    | solid     | JAR
            Kozo tissue, 5 g/m²                           | tissue    | TISSUE
            Unbuffered interleaving tissue                | housing   | TISSUE
            Buffered museum board                         | housing   | BOARD
            Polyester film, 100 µm                        | support   | FILM
            Vapour-permeable membrane                     | support   | WEB
            Silicone release paper                        | support   | PAPER
            """)
    void a_thing_is_drawn_as_what_its_name_and_kind_tell(String name, String kind, DrawnThing thing) {
        assertThat(DrawnThing.called(name, kind, ReferenceReader.shipped())).contains(thing);
    }

    @Test
    void a_tool_of_another_name_is_not_drawn() {
        assertThat(DrawnThing.called("Brushless motor", "tool", ReferenceReader.shipped())).isEmpty();
        assertThat(DrawnThing.called("Loupe", "tool", ReferenceReader.shipped())).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(DrawnThing.class)
    void a_larger_drawing_has_the_same_strokes_that_many_times_as_long(DrawnThing thing) {
        List<Integer> once = numbers(thing, 1);
        assertThat(once).isNotEmpty();
        assertThat(numbers(thing, TIMES)).isEqualTo(once.stream().map(number -> TIMES * number).toList());
    }

    @Test
    void each_material_of_the_demo_is_drawn_with_its_figures_on_its_page() {
        Library library = DemoSite.made().library();
        assertThat(library.materials().values()).allMatch(material ->
                DrawnThing.called(material.name(), material.kind(), library.reference()).isPresent());
        assertThat(drawing("materials/ethanol-96.html")).matches("A bottle: 96\\h%\\hv/v[.]");
        assertThat(drawing("materials/blotter-300.html")).matches("A sheet of blotting paper: 300\\hg/m²; 600\\hmm\\h×\\h480\\hmm[.]");
        assertThat(drawing("materials/soft-brush.html")).isEqualTo("A brush.");
    }

    private static String drawing(String path) {
        DemoSite demo = DemoSite.made();
        return DemoSite.pages(demo.cases(), demo.site()).stream().filter(page -> page.path().equals(path)).flatMap(AllBlocks::of)
                .filter(DrawingRow.class::isInstance).map(DrawingRow.class::cast).flatMap(row -> row.drawings().stream())
                .map(Chart.Drawing::description).collect(Collectors.joining(" "));
    }

    private static List<Integer> numbers(DrawnThing thing, int times) {
        DrawingPen pen = new DrawingPen();
        thing.draw(pen, 0, 0, times);
        return pen.drawing("any", "Any", "Any.", "").marks().stream().flatMap(mark -> NUMBER.matcher(mark.text()).results())
                .map(found -> Integer.parseInt(found.group())).toList();
    }
}
