package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The command line that answers for any bottle: what it prints where, and how it ends. */
class HazardsTest {

    /** What a run left behind. */
    private record Ran(int code, String out, String err) {

        static Ran of(String... words) {
            StringWriter out = new StringWriter();
            StringWriter err = new StringWriter();
            int code = Main.run(new PrintWriter(out), new PrintWriter(err), words);
            return new Ran(code, out.toString(), err.toString());
        }

        /** JSON is read as YAML, of which it is a part. */
        @SuppressWarnings("unchecked")
        Map<String, Object> json() {
            return (Map<String, Object>) new Yaml(new SafeConstructor(new LoaderOptions())).load(out);
        }
    }

    /** Isopropanol and acetone are narcotics, 12 + 8 reaches the 20 % of CLP Annex I, 3.8.3.4.5; ethanol burns. */
    @Test
    @SuppressWarnings("unchecked")
    void three_solvents_are_answered_with_every_key_in_order() {
        Ran ran = Ran.of("hazards", "isopropanol 12 % m/m; ACETONE 8 % m/m; rest 64-17-5", "--format", "json");

        assertThat(ran.code()).isZero();
        assertThat(ran.json().keySet()).containsExactly("parts", "known", "unknown", "classes", "signal", "pictograms",
                "precautions", "protection", "waste", "incompatible", "public", "trainee", "why");
        assertThat((List<Map<String, Object>>) ran.json().get("parts")).extracting(part -> part.get("id"))
                .containsExactly("isopropanol", "acetone", "ethanol");
        assertThat((List<Map<String, Object>>) ran.json().get("classes")).extracting(one -> one.get("statement"))
                .contains("H225", "H319", "H336");
        assertThat(ran.json()).containsEntry("signal", "Danger").containsEntry("known", true);
    }

    @Test
    void an_unknown_part_gives_the_whole_answer_and_a_suggestion_and_ends_with_one() {
        Ran ran = Ran.of("hazards", "isoproponol 12 % m/m; rest ethanol", "--format", "json");

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.json()).containsEntry("known", false).containsEntry("trainee", "refused")
                .containsEntry("public", "withheld").containsEntry("signal", "Danger");
        assertThat(ran.json().get("unknown").toString()).contains("isopropanol");
        assertThat(ran.json().get("waste").toString()).contains("group=null");
        assertThat(ran.json().get("protection").toString()).contains("not known before section 8 of the safety data sheet");
    }

    /** Acetone and peroxide give explosive peroxides: common practice, no source. */
    @Test
    void what_must_not_meet_ends_with_one() {
        Ran ran = Ran.of("hazards", "hydrogen peroxide 5 % m/m; acetone 10 % m/m; rest water", "--format", "json");

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.json().get("incompatible").toString()).contains("acetone");
    }

    /** 0.1 % by mass is 0.025 mol/kg sodium hydroxide, pH 12.3 by the handbook; pH 11.5 counts as corrosive (CLP 3.2.3.1.2). */
    @Test
    void a_stated_ph_is_held_against_what_is_in_the_bottle() {
        assertThat(Ran.of("hazards", "sodium hydroxide 0.1 % m/m; rest water").out()).contains("H314");
        Ran stated = Ran.of("hazards", "sodium hydroxide 0.1 % m/m; rest water", "--ph", "9");
        assertThat(stated.code()).isEqualTo(1);
        assertThat(stated.out()).contains("H314", "pH 9 is stated").doesNotContain("goes to the drain");
        assertThat(Ran.of("hazards", "sodium hydroxide 0.1 % m/m; rest water", "--ph", "12.4").code()).isZero();
    }

    @Test
    void a_malformed_line_is_refused_with_its_place() {
        Ran bare = Ran.of("hazards", "acetone 8 %; rest ethanol");
        Ran missing = Ran.of("hazards", "acetone; ethanol 5 % m/m");
        Ran much = Ran.of("hazards", "acetone 60 % m/m; ethanol 50 % m/m");

        assertThat(List.of(bare.code(), missing.code(), much.code())).containsOnly(2);
        assertThat(bare.err()).contains("Column 9", "% m/m");
        assertThat(missing.err()).contains("Column 1", "acetone");
        assertThat(much.err()).contains("110 %");
        assertThat(Ran.of("hazards", "acetone", "--ph", "blue").code()).isEqualTo(2);
    }

    @Test
    void the_label_is_a_page_of_its_own_and_forbids_use_where_something_is_unknown() {
        Ran known = Ran.of("hazards", "acetone 8 % m/m; rest ethanol", "--label");
        Ran unknown = Ran.of("hazards", "mystery 8 % m/m; rest ethanol", "--label");

        assertThat(known.out()).startsWith("<!DOCTYPE html>").contains("<svg", "label__signal", "Danger")
                .doesNotContain("Hazards not known", "href=", "src=");
        assertThat(unknown.code()).isEqualTo(1);
        assertThat(unknown.out()).contains("Hazards not known. Do not use", "Highly flammable");
    }

    /** A city that takes pH 7 to 8 alone is stricter than the narrowest published window, 6 to 9 (common practice, no source). */
    @Test
    void the_window_of_the_studio_for_the_drain_counts(@TempDir Path content) throws IOException {
        String bath = "calcium bicarbonate 0.1 % m/m; rest water";
        Files.writeString(content.resolve("studio.yaml"), "name: A studio without a window of its own\n");
        assertThat(Ran.of("hazards", bath, "--ph", "6.5", "--content", content.toString()).out()).contains("to the drain");

        Files.writeString(content.resolve("studio.yaml"), "drain window: pH 7 to 8\n");

        Ran outside = Ran.of("hazards", bath, "--ph", "6.5", "--content", content.toString());
        assertThat(outside.code()).isZero();
        assertThat(outside.out()).doesNotContain("to the drain");
        assertThat(Ran.of("hazards", bath, "--ph", "7.5", "--content", content.toString()).out()).contains("to the drain");
    }

    /** A row that cannot be read would leave the shipped one, which may be milder, in its place. */
    @Test
    void nothing_is_answered_from_tables_with_errors(@TempDir Path content) throws IOException {
        Files.writeString(content.resolve("studio.yaml"), "drain window: pH 5 to 10\n");
        Ran wide = Ran.of("hazards", "water", "--content", content.toString());
        Files.writeString(content.resolve("studio.yaml"), "drain window: pH 7 to 8\n");
        Files.createDirectories(content.resolve("reference"));
        Files.writeString(content.resolve("reference/substances.yaml"), "ethanol: {name: Ethanol, hazards: known}\n");
        Ran row = Ran.of("hazards", "ethanol", "--content", content.toString());

        assertThat(List.of(wide.code(), row.code())).containsOnly(1);
        assertThat(wide.err()).contains("HAZ-024");
        assertThat(row.err()).contains("REF-001");
        assertThat(List.of(wide.out(), row.out())).containsOnly("");
    }

    /** Another studio's answers are no answer: a slip in --content told nothing and gave the shipped tables. */
    @Test
    void a_named_folder_that_is_missing_or_no_content_folder_is_told_and_gives_no_answer(@TempDir Path folder) {
        Ran missing = Ran.of("hazards", "ethanol", "--content", folder.resolve("contnet").toString());
        Ran empty = Ran.of("hazards", "ethanol", "--content", folder.toString());

        assertThat(missing.err()).contains("READ-001", "--content");
        assertThat(empty.err()).contains("READ-002", "studio.yaml");
        assertThat(List.of(missing.code(), empty.code())).containsOnly(1);
        assertThat(List.of(missing.out(), empty.out())).containsOnly("");
    }
}
