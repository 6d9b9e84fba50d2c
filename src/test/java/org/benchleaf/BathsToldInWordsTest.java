package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Baths of one step that nobody timed to the minute: the sheets and timers tell each of them as it is told. */
class BathsToldInWordsTest {

    @TempDir
    private static Path folder;
    private static Path pages;

    @BeforeAll
    static void publish() throws IOException {
        pages = Published.sound(folder, text -> text.replace("      each: 20 min\n",
                "      each: [about 20 min, 15 min, less than 20 min]\n      filling: 10 min\n      changing: 2 min\n")
                .replace("    hands-on: 35 %\n", "    hands-on: about 25 min\n"));
    }

    @Test
    void the_step_tells_each_bath_and_what_needs_a_person_as_they_are_told() throws IOException {
        // By hand: 10 + 17.5 + 2 + 15 + 2 + 0 min, and 10 + 22.5 + 2 + 15 + 2 + 20 min.
        assertThat(page("steps.html").getElementById("step-wash").text())
                .contains("3 baths: about 20 min + 15 min + less than 20 min", "Takes 46–72 min, of which about 25 min hands-on");
    }

    @Test
    void a_timer_runs_as_long_as_the_number_that_is_told() throws IOException {
        // By hand, in seconds: 20, 15, 20 and 20 min.
        assertThat(page("steps.html").getElementById("step-wash").select("[data-seconds]").eachAttr("data-seconds"))
                .startsWith("1200", "900", "1200", "1200");
    }

    private static Document page(String name) throws IOException {
        return Jsoup.parse(Files.readString(pages.resolve(name)).replaceAll("[\u00a0\u202f\u2009]", " "));
    }
}
