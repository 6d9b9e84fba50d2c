package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.DemoSite;
import org.benchleaf.page.Block;
import org.benchleaf.page.DrawingRow;
import org.benchleaf.page.Table;
import org.junit.jupiter.api.Test;

/** What the papers of the demo's washing class tell those who buy, lay out and compare. */
class ClassSheetsTest {

    private static final DemoSite DEMO = DemoSite.made();

    /** From the class's file: the hood is shared, and each station mists its sheet in it. */
    @Test
    void the_hood_is_drawn_at_each_station() {
        assertThat(page("-stations.html").filter(DrawingRow.class::isInstance).map(DrawingRow.class::cast)
                .flatMap(row -> row.drawings().stream()).filter(drawing -> drawing.id().matches("station-\\d-drawing")))
                .hasSize(6).allSatisfy(drawing -> assertThat(drawing.description()).startsWith("Wet side: hood;"));
    }

    /** From the case's file: the meter of its baths is calibrated with three buffers. */
    @Test
    void the_buffers_of_the_meter_are_ordered() {
        assertThat(rows("-orders.html", "orders-table")).anySatisfy(row -> assertThat(row.get(0)).contains("pH 4.01, pH 7, pH 9.18"));
    }

    /** From the issues' file: of ethanol there were 39.17 mL; an order is told with three digits. */
    @Test
    void an_earlier_issue_is_told_with_the_digits_of_the_order_list() {
        assertThat(rows("-spring-course.html", "changes-since-2")).anySatisfy(row -> assertThat(row.get(1)).isEqualTo("39.2 mL"))
                .allSatisfy(row -> assertThat(String.join(" ", row)).doesNotContainPattern("\\d\\.\\d\\d"));
    }

    @Test
    void several_of_a_thing_are_told_by_a_sign_and_not_by_a_word_in_the_singular() {
        assertThat(rows("-stations.html", "station-1-times")).anySatisfy(row -> assertThat(row.get(3)).contains("2 × board"));
    }

    /** From the case's file, which sprays from 40 cm, and the table of cautions, which has several who spray take turns. */
    @Test
    void a_station_sheet_tells_how_far_to_spray_from_and_what_to_heed_where_the_work_begins() {
        assertThat(rows("-stations.html", "station-4-times")).anySatisfy(row -> assertThat(row.get(2)).contains("Mist the sheet", "40 cm",
                "Danger: Sprayed solvent", "take turns")).anySatisfy(row -> assertThat(row.get(2)).contains("with goggles on"));
    }

    /** From the class's file: all of the washing water goes into cans beside the sinks, and out of cans into the tray. */
    @Test
    void what_becomes_of_the_washing_water_is_told_in_one_way() {
        String page = page("-preparation.html").map(String::valueOf).collect(Collectors.joining("\n"));
        assertThat(page).contains("The class collects all of it in its cans. They stand beside the sinks.").doesNotContain("goes to the drain");
        assertThat(rows("-preparation.html", "waste-table")).allSatisfy(row -> assertThat(row.get(3)).doesNotContain("No can"));
    }

    private static List<List<String>> rows(String page, String table) {
        List<List<String>> rows = page(page).filter(Table.class::isInstance).map(Table.class::cast).filter(one -> one.id().equals(table))
                .flatMap(one -> one.rows().stream())
                .map(row -> row.stream().map(cell -> cell.plain().replaceAll("\\h", " ")).toList()).toList();
        assertThat(rows).as(page + " " + table).isNotEmpty();
        return rows;
    }

    private static Stream<Block> page(String name) {
        return DemoSite.pages(DEMO.cases(), DEMO.site()).stream()
                .filter(page -> page.path().startsWith("cases/tide-table/class-spring-course") && page.path().endsWith(name))
                .flatMap(AllBlocks::of);
    }
}
