package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A bath is brought to a pH as a person tells it; what follows is worked out as far as it can be. */
class AdjustedBathTest {

    private static final Path SOUND = Path.of("src/test/resources/sound/base");

    @TempDir
    private Path folder;

    @Test
    void about_a_ph_is_told_as_about() throws IOException {
        // By the rule of rounding, what is written as 8.5 lies between 8.45 and 8.55.
        assertThat(prepared("about pH 8.5")).contains("brought to pH about 8.5", "Bring the bath to pH about 8.5 by a meter",
                "wanted pH pH 8.45 to 8.55").doesNotContain("8.4–8.6", "8.4 to 8.6");
    }

    @Test
    void a_range_is_kept_and_not_narrowed_to_its_middle() throws IOException {
        assertThat(prepared("pH 8 to 8.5")).contains("brought to pH 8–8.5", "Bring the bath to pH 8–8.5 by a meter");
    }

    @Test
    void a_tolerance_is_the_window_of_the_meter() throws IOException {
        assertThat(prepared("pH 8.5 ± 0.2")).contains("Bring the bath to pH 8.3–8.7 by a meter");
    }

    @Test
    void one_number_is_met_to_a_tenth() throws IOException {
        assertThat(prepared("pH 8.5")).contains("brought to pH 8.5", "Bring the bath to pH 8.4–8.6 by a meter");
    }

    @Test
    void of_an_open_end_no_amount_is_worked_out_and_the_hazards_are_not_known() throws IOException {
        String told = told("less than pH 8.5");
        assertThat(told).contains("HAZ-004", "Told is only that it was brought to less than pH 8.5");
    }

    @Test
    void a_form_that_cannot_be_read_and_a_ph_that_no_meter_reads_are_told() throws IOException {
        assertThat(told("about eight")).contains("FORM-057");
        assertThat(told("about pH 15")).contains("FORM-021");
        assertThat(told("not known")).contains("FORM-02");
    }

    private String prepared(String ph) throws IOException {
        Path site = folder.resolve("site");
        Published.from(content(ph), site, "2026-06-01");
        return Jsoup.parse(Files.readString(site.resolve("cases/tide/preparation.html"))).text().replaceAll("[\u00a0\u202f\u2009]", " ");
    }

    private String told(String ph) throws IOException {
        StringWriter told = new StringWriter();
        PrintWriter out = new PrintWriter(told, true);
        Main.run(out, out, "check", "--content", content(ph).toString());
        return told.toString();
    }

    private Path content(String ph) throws IOException {
        Path content = folder.resolve("content-" + ph.replaceAll("\\W", ""));
        ChangedContent.copy(SOUND, content);
        Path file = content.resolve("cases/tide/case.md");
        Files.writeString(file, Files.readString(file).replace("with: lime-water, to: pH 8.5", "with: lime-water, to: " + ph));
        return content;
    }
}
