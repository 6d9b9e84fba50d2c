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

/** Baths of one step that last unlike times: the sheets, timers and clock tell each of them. */
class UnlikeBathsTest {

    @TempDir
    private static Path folder;
    private static Path pages;

    @BeforeAll
    static void publish() throws IOException {
        pages = Published.sound(folder, text -> text.replace("      each: 20 min\n",
                "      each: [20 min, 15 min, 30 min]\n      filling: 10 min\n      changing: 2 min\n"));
    }

    @Test
    void the_step_tells_each_bath_and_the_time_of_all() throws IOException {
        // By hand: 10 + 20 + 2 + 15 + 2 + 30 min.
        assertThat(page("steps.html").getElementById("step-wash").text()).contains("3 baths: 20 min + 15 min + 30 min", "Takes 79 min")
                .doesNotContain("20 min each");
    }

    @Test
    void each_bath_has_a_timer_of_its_own_length_and_a_further_one_that_of_the_last() throws IOException {
        Document sheet = page("steps.html");
        // By hand, in seconds: 20, 15, 30 and 30 min.
        assertThat(sheet.getElementById("step-wash").select("[data-seconds]").eachAttr("data-seconds"))
                .startsWith("1200", "900", "1800", "1800");
    }

    private static Document page(String name) throws IOException {
        return Jsoup.parse(Files.readString(pages.resolve(name)).replaceAll("[\u00a0\u202f\u2009]", " "));
    }
}
