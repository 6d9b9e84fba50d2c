package org.benchleaf.compose.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.AllBlocks;
import org.benchleaf.derive.CaseLayOut;
import org.benchleaf.derive.classes.ClassSupplies.Kind;
import org.benchleaf.derive.classes.ClassSupplies.LaidOut;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.model.Library;
import org.benchleaf.model.Material;
import org.benchleaf.page.Block;
import org.benchleaf.page.Chart;
import org.benchleaf.page.DrawingRow;
import org.benchleaf.page.Table;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The station as laid out shows the things of its list under their numbers, and what gets wet apart from what stays dry. */
class StationDrawingTest {

    private static final DemoSite DEMO = DemoSite.made();

    @ParameterizedTest
    @ValueSource(strings = {"ferry-letter", "flood-poster", "lock-plan", "parish-map", "tide-table"})
    void each_thing_that_is_laid_down_stands_in_the_drawing_under_its_number(String id) {
        Library library = DEMO.library();
        List<LaidOut> list = CaseLayOut.of(DemoSite.worked(id, library), library);
        Chart.Drawing drawing = drawing("cases/" + id + "/preparation.html", "lay-out-drawing");

        for (int i = 0; i < list.size(); i++) {
            Material material = library.materials().get(list.get(i).id());
            // With what is prepared, and what all share, lies elsewhere.
            boolean elsewhere = material != null && !library.reference().worn(material).isEmpty() || list.get(i).kind() == Kind.MAKING;
            String named = (i + 1) + " " + (material != null ? material.name() : list.get(i).kind() == Kind.WEIGHT ? "Weight"
                    : list.get(i).mark().flatMap(Preparation.Mark::tray)
                    .orElse(list.get(i).id().equals("meter") ? "pH meter" : list.get(i).id()));
            assertThat(" " + plain(drawing.description())).as(named).matches(text -> text.toLowerCase(Locale.ROOT)
                    .contains(" " + named.toLowerCase(Locale.ROOT)) != elsewhere);
            String number = String.valueOf(i + 1);
            assertThat(labels(drawing)).as(named).matches(labels -> labels.stream().anyMatch(label ->
                    label.equals(number) || label.startsWith(number + " (")) != elsewhere);
        }
    }

    /** From the case's file: the film and web carry the wet sheet, the sprayer holds the mist; blotters and boards stay dry. */
    @Test
    void what_goes_into_bath_or_mist_lies_on_the_wet_side() {
        String told = plain(drawing("cases/tide-table/preparation.html", "lay-out-drawing").description());
        String wet = told.substring(0, told.indexOf("Dry side: "));

        assertThat(wet).startsWith("Wet side: ").contains("Polyester film", "Spun-bonded polyester web", "Hand sprayer",
                "Medium tray, to the 25 mm mark");
        assertThat(told.substring(wet.length())).contains("Blotting paper", "Wool felt", "Kozo tissue").doesNotContain("sprayer");
    }

    /** Nothing of the plan is bathed or misted. */
    @Test
    void a_case_without_bath_or_mist_has_no_wet_side() {
        assertThat(drawing("cases/flood-poster/preparation.html", "lay-out-drawing").description()).startsWith("Dry side: ");
    }

    @Test
    void each_station_of_a_class_has_its_drawing_with_the_counts_of_its_list() {
        String page = "cases/tide-table/class-spring-course-stations.html";
        Chart.Drawing drawing = drawing(page, "station-1-drawing");
        List<List<String>> rows = blocks(page).filter(Table.class::isInstance).map(Table.class::cast)
                .filter(table -> table.id().equals("station-1-kit")).flatMap(table -> table.rows().stream())
                .map(row -> row.stream().map(cell -> plain(cell.plain())).toList()).toList();

        assertThat(rows).isNotEmpty();
        assertThat(labels(drawing)).isNotEmpty().allSatisfy(label -> {
            if (Character.isDigit(label.charAt(0))) {
                String number = label.split(" ")[0];
                assertThat(rows).anyMatch(row -> row.get(0).startsWith(number + ". ")
                        && label.replace(" ×", "").equals(number + " (" + row.get(1) + ")"));
            }
        });
    }

    /** The class of six washes, with a panel beside each tray; that of twelve only mends. */
    @Test
    void a_station_of_a_class_has_a_tray_only_where_it_bathes() {
        assertThat(plain(drawing("cases/tide-table/class-spring-course-stations.html", "station-1-drawing").description()))
                .contains("tray");
        assertThat(plain(drawing("cases/tide-table/class-tissue-and-paste-stations.html", "station-1-drawing").description()))
                .doesNotContainIgnoringCase("tray").contains("Paste brush");
        // Nothing but the paste is wet there; the web lies at the weights.
        assertThat(plain(drawing("cases/tide-table/class-tissue-and-paste-stations.html", "station-1-drawing").description()))
                .startsWith("Wet side: 2 Wheat starch paste").containsSubsequence("Dry side: ", "Spun-bonded polyester web");
    }

    @Test
    void the_assessment_shows_a_wet_sheet_lifted_well_and_badly() {
        Chart.Drawing drawing = drawing("cases/tide-table/class-spring-course-assessment.html", "step-wash-lifted");

        assertThat(drawing.description()).contains("Polyester film, 100").contains("Held by a corner");
    }

    private static Chart.Drawing drawing(String path, String id) {
        return blocks(path).filter(DrawingRow.class::isInstance).map(DrawingRow.class::cast).flatMap(row -> row.drawings().stream())
                .filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    }

    private static Stream<Block> blocks(String path) {
        return DemoSite.pages(DEMO.cases(), DEMO.site()).stream().filter(page -> page.path().equals(path)).flatMap(AllBlocks::of);
    }

    private static List<String> labels(Chart.Drawing drawing) {
        return drawing.marks().stream().filter(mark -> mark.kind().equals("text")).map(mark -> plain(mark.text()))
                .collect(Collectors.toList());
    }

    private static String plain(String text) {
        return text.replaceAll("\\h", " ");
    }
}
