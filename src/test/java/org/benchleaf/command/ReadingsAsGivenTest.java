package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.benchleaf.Published;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings stand on the results page as they were given, and nothing is told that nobody read. */
class ReadingsAsGivenTest {

    private static final String READINGS = "    instrument: flat-electrode\n    equilibrated: 48 h\n"
            + "    places: [margin head, margin foot, left edge, right edge, centre]\n"
            + "    before: [4.4, 4.5, 4.3, 4.6, 4.4]\n    after: [7.3, 7.1, 7.2, 7.4, 7.0]\n";

    @TempDir
    private static Path folder;
    private static Path pages;
    private static String results;
    private static String study;

    @BeforeAll
    static void publish() throws IOException {
        pages = Published.sound(folder, text -> text.replace(READINGS, """
                    before: mean 4.6
                    after: mean 7.20, n = 5, sd 0.10
                  - measure: pH after ageing
                    method: cold extract
                    aged: 80 °C, 65 % RH, 12 d
                    before: about 5
                    after: less than 6.5
                  - measure: cold extract pH
                    unit: pH
                    kind: strip
                    method: indicator strips
                    before: [4.0, 4.5]
                    after: [6.5, 7.0, 7.0]
                  - measure: stain
                    method: compared with a card of stains
                    ranks: [none, faint, clear, strong]
                    before: strong
                    after: faint
                """.indent(0)));
        results = page("results.html");
        study = page("index.html");
    }

    private static String page(String name) throws IOException {
        return Jsoup.parse(Files.readString(pages.resolve(name))).text().replace('\u202F', ' ');
    }

    @Test
    void a_mean_is_told_with_the_number_of_its_readings_or_that_it_is_not_recorded() {
        assertThat(results).contains("mean 4.6 (number of readings not given)", "mean 7.20 (n = 5, standard deviation 0.1)",
                "The number of readings behind a mean is not given.");
        assertThat(study).contains("mean 4.6 (number of readings not given)").doesNotContain("A single reading", "n = 1");
    }

    @Test
    void what_is_no_single_number_stays_so_and_has_no_change() {
        assertThat(results).contains("about 5", "less than 6.5", "80 °C, 65 % RH, 12 d",
                "A range, a class or a limit is no single number, so no change is worked out.");
    }

    /** A strip read to halves never prints a quarter; two readings have no mean finer than they are. */
    @Test
    void strips_are_told_no_finer_than_they_are_read() {
        assertThat(results).contains("Read with indicator strips").doesNotContain("4.25", "6.83");
    }

    @Test
    void a_word_has_its_place_on_the_scale() {
        assertThat(results).contains("strong (4 of 4)", "faint (2 of 4)");
    }
}
