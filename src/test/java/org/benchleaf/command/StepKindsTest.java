package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.ChangedContent;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** A case of poultice, gel, suction, light, gas, tape, ageing, dry adhesives, a step of its own kind and a trial, published. */
class StepKindsTest {

    private static final Path RESOURCES = Path.of("src/test/resources");

    @TempDir
    private static Path folder;
    private static final Map<String, JsonNode> FIGURES = new HashMap<>();

    @BeforeAll
    static void publish() throws IOException {
        Path content = folder.resolve("content");
        ChangedContent.of(RESOURCES.resolve("sound/base"), RESOURCES.resolve("kinds/change.txt"), content);
        StringWriter err = new StringWriter();
        int code = new CommandLine(new PublishCommand()).setOut(new PrintWriter(new StringWriter()))
                .setErr(new PrintWriter(err)).execute("--content", content.toString(), "--site",
                        folder.resolve("site").toString(), "--on", "2026-06-01");
        assertThat(code).as(err.toString()).isZero();
        new ObjectMapper().readTree(folder.resolve("site/cases/stains/figures.json").toFile()).get("figures")
                .forEach(figure -> FIGURES.put(figure.get("id").asText(), figure));
    }

    private static Document page(String name) throws IOException {
        return Jsoup.parse(Files.readString(folder.resolve("site/cases/stains").resolve(name)));
    }

    /** The words of a page with every space a plain one. */
    private static String text(String name) throws IOException {
        return page(name).text().replace('\u202F', ' ').replace('\u00A0', ' ');
    }

    /** Layers and strips: geometry, worked by hand. Light and gas: definitions of luminous exposure and of ppm by volume. */
    @ParameterizedTest
    @CsvSource({"gel.volume, 0.0072, L", "gel.total, 0.0144, L", "residue.total, 0.03, L", "light.exposure, 0.08, Mlx·h",
            "bubble.room-rise, 300, ppm", "mend-warm.area, 5, cm²", "mend-warm.coating-mass, 4, mg",
            "mend-woken.area, 4, cm²", "mend-woken.activator-mass, 0.04, g"})
    void what_a_step_takes_is_worked_out(String id, double expected, String unit) {
        assertThat(FIGURES).containsKey(id);
        assertThat(FIGURES.get(id).get("unit").asText()).isEqualTo(unit);
        assertThat(FIGURES.get(id).get("value").asDouble()).isCloseTo(expected, within(1e-9 * expected));
    }

    /** The case floats a sheet on damp blotters and rinses nothing: no list of cases says that it does. */
    @Test
    void a_step_of_its_own_kind_is_told_as_itself_and_not_as_the_kind_it_is_nearest_to() throws IOException {
        List<String> lists = Files.walk(folder.resolve("site/browse")).map(file -> file.getFileName().toString()).toList();
        assertThat(lists).anyMatch(name -> name.contains("floating-on-damp-blotters"));
    }

    @Test
    void a_dry_adhesive_is_no_wet_paste() {
        assertThat(FIGURES.keySet()).noneMatch(id -> id.endsWith("paste-mass"));
        assertThat(FIGURES.keySet()).doesNotContain("mend-warm.activator-mass", "mend-pressed.activator-mass");
    }

    @Test
    void the_step_sheet_tells_what_each_kind_needs() throws IOException {
        assertThat(text("steps.html")).contains("Gel cleaning", "Poulticing", "Suction", "Light bleaching",
                "Carbonation", "Ageing", "Floating on damp blotters", "of its own, nearest to Rinsing",
                "Adhesive on the tissue", "by heat", "by pressure alone", "by a solvent", "Window of temperature 65–75 °C",
                "nothing: direct contact", "Mending: close the tear at the head", "Mending: close the tear at the left edge");
    }

    @Test
    void hazards_of_the_new_kinds_are_told() throws IOException {
        assertThat(text("steps.html")).contains("gas that stifles", "solvent held against the skin", "strong light",
                "hot chamber");
    }

    @Test
    void a_trial_is_a_table_of_arms_with_what_nobody_recorded_told_so() throws IOException {
        List<List<String>> arms = page("index.html").select("#trial-gels-arms tbody tr").stream()
                .map(row -> row.select("th, td").eachText()).toList();
        assertThat(arms).containsExactly(List.of("methyl cellulose gel", "treated", "5"),
                List.of("agar gel", "treated", "not recorded"), List.of("untreated", "control", "5"));
        List<List<String>> measured = page("results.html").select("#trial-gels-1 tbody tr").stream()
                .map(row -> row.select("th, td").eachText()).toList();
        assertThat(measured).hasSize(3);
        assertThat(measured.get(1)).containsExactly("agar gel", "about 82", "86 to 88");
        assertThat(measured.get(2)).containsExactly("untreated", "not recorded", "not recorded");
        assertThat(measured.get(0).get(1)).contains("82.4", "n = 5", "0.3");
    }

    /** 1.5 kg on 150 × 100 mm under standard gravity, 9.80665 m/s²: 3rd General Conference on Weights and Measures, 1901. */
    @Test
    void a_step_on_one_item_is_worked_out_by_the_size_of_that_item() {
        assertThat(FIGURES.get("press-leaf.pressure").get("value").asDouble()).isCloseTo(1.5 * 9.80665 / (0.15 * 0.10) / 1000,
                within(1e-9));
    }

    @Test
    void every_page_tells_which_item_a_size_a_damage_a_step_and_a_result_are_of() throws IOException {
        assertThat(text("index.html")).contains("The flyleaf Size: 150 mm × 100 mm. Condition: creased across the middle. "
                + "Decision: pressed only.", "A slip with a note Size: not recorded. Condition: not recorded. Decision: not recorded.",
                "the flyleaf, centre", "Flattening (the flyleaf)");
        assertThat(text("steps.html")).contains("Flattening (the flyleaf)", "Done to the flyleaf");
        assertThat(page("results.html").select("h2").eachText()).contains("pH, the flyleaf", "pH");
    }

    @Test
    void no_arm_of_a_trial_is_a_step() throws IOException {
        assertThat(text("steps.html")).doesNotContain("agar gel");
    }
}
