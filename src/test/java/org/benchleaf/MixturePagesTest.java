package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A case with mixtures of three solvents, published: what its sheet, its labels and its data say. Sums by hand. */
class MixturePagesTest {

    @TempDir
    private static Path folder;
    private static Document sheet;

    @BeforeAll
    static void publish() throws IOException {
        Path content = ChangedContent.of(Path.of("src/test/resources/sound/base"),
                Path.of("src/test/resources/mixtures/three-solvents.txt"), folder.resolve("content"));
        StringWriter told = new StringWriter();
        PrintWriter out = new PrintWriter(told, true);
        assertThat(Main.run(out, out, "publish", "--content", content.toString(), "--site",
                folder.resolve("site").toString(), "--on", "2026-06-01")).as(told::toString).isZero();
        sheet = Jsoup.parse(Files.readString(folder.resolve("site/cases/tide/preparation.html")));
    }

    /** What stands in an element, with plain spaces. */
    private static String text(Element element) {
        return element.text().replaceAll("[\\u00a0\\u202f\\u2009]", " ");
    }

    /** What is measured out: each amount and what it is of. */
    private static String measures(String name) {
        return text(sheet.select("#prepare-" + name + " table").stream()
                .filter(table -> text(table).contains("Amount With")).findFirst().orElseThrow());
    }

    @Test
    void the_sheet_measures_out_every_part() {
        // 500 g × 12 % and × 8 %; 400 g are left. 120 mL × 3/6, 2/6 and 1/6.
        assertThat(measures("solvent")).contains("Isopropanol 60 g", "Acetone 40 g",
                "Ethanol, 96 % v/v 400 g");
        assertThat(measures("parted")).contains("Isopropanol 60 mL", "Acetone 40 mL", "Ethanol, 96 % v/v 20 mL");
        assertThat(text(sheet.getElementById("prepare-parted"))).contains("The volume may shrink");
    }

    @Test
    void the_label_names_the_true_rest_and_no_water() {
        List<String> strengths = sheet.select(".label__strength").stream().map(MixturePagesTest::text).toList();
        assertThat(strengths).filteredOn(text -> text.contains("12")).singleElement().satisfies(text ->
                assertThat(text).contains("isopropanol", "8", "acetone", "the rest ethanol, 96 % v/v")
                        .doesNotContain("water"));
        assertThat(strengths).anySatisfy(text -> assertThat(text).contains("3 parts of isopropanol", "2 parts of acetone",
                "1 part of ethanol, 96 % v/v", "by volume"));
    }

    @Test
    void totals_and_data_hold_every_part() throws IOException {
        JsonNode data = new ObjectMapper().readTree(folder.resolve("site/cases/tide/figures.json").toFile());
        assertThat(data.findValuesAsText("id")).contains("solvent.isopropanol-mass", "solvent.isopropanol-volume",
                "solvent.acetone-mass", "solvent.rest-mass", "parted.part-3");
        assertThat(sheet.getElementById("totals").text()).contains("Isopropanol", "Acetone");
    }
}
