package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a published case leaves open stands at the step and among the results; nobody at the bench takes it for kept. */
class OpenQuestionsTest {

    @TempDir
    private static Path folder;

    @BeforeAll
    static void publish() {
        Path content = ChangedContent.of(Path.of("src/test/resources/sound/base"),
                Path.of("src/test/resources/open-questions/bath-without-temperature.txt"), folder.resolve("content"));
        StringWriter told = new StringWriter();
        PrintWriter out = new PrintWriter(told, true);
        assertThat(Main.run(out, out, "publish", "--content", content.toString(), "--site",
                folder.resolve("site").toString(), "--on", "2026-06-01")).as(told::toString).isZero();
    }

    @Test
    void the_step_sheet_tells_at_the_step_what_cannot_be_told() throws IOException {
        Document sheet = page("steps.html");
        assertThat(sheet.getElementById("step-wash").select(".strip__told > div").eachText()).contains(
                "Open question It cannot be told from the case whether this is kept: No bath is warmer than 60 °C. Ask before you begin.");
        assertThat(sheet.select("li.strip__step:not(#step-wash)").text()).doesNotContain("Open question");
    }

    @Test
    void the_results_list_it_apart_from_the_rules_that_were_kept() throws IOException {
        Document results = page("results.html");
        assertThat(results.getElementById("findings-not-told").text()).contains("No bath is warmer than 60 °C.");
        assertThat(results.getElementById("findings-kept").text()).doesNotContain("No bath is warmer than 60 °C.");
    }

    private static Document page(String name) throws IOException {
        return Jsoup.parse(Files.readString(folder.resolve("site/cases/tide").resolve(name)).replaceAll("[\u00a0\u202f\u2009]", " "));
    }
}
