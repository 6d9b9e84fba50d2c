package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The files that hold a whole page, each opened in a folder of its own as if it came with a mail. */
class WholeFileIT {

    /** The house's own measure: what a mail takes anywhere. */
    private static final long HEAVIEST = 1_500_000;

    @TempDir
    private static Path folder;
    private static Window window;
    private static List<String> names;

    @BeforeAll
    static void take_them_away() throws IOException {
        Path site = SiteUnderTest.demo().root();
        try (Stream<Path> files = Files.walk(site)) {
            List<Path> whole = files.filter(SiteUnderTest::holdsWholePage).sorted().toList();
            for (Path file : whole) {
                Files.copy(file, folder.resolve(name(site, file)));
            }
            names = whole.stream().map(file -> name(site, file)).toList();
        }
        window = Window.on(folder.toRealPath());
    }

    private static String name(Path site, Path file) {
        return site.relativize(file).toString().replaceAll("[/\\\\]", "-");
    }

    @AfterAll
    static void close() {
        window.close();
    }

    @Test
    void every_page_of_every_case_is_there_and_light_enough_for_a_mail() throws IOException {
        long pages = SiteUnderTest.demo().pages().stream().filter(page -> page.path().matches("(?:[a-z]+/)?cases/.*")).count();
        assertThat(names).hasSize((int) pages).anyMatch(name -> name.contains("steps-whole-with-pictures"));
        for (String name : names) {
            assertThat(Files.size(folder.resolve(name))).as(name).isLessThanOrEqualTo(HEAVIEST);
        }
    }

    @Test
    void each_opens_alone_without_a_request_or_a_word_on_the_console_and_leads_nowhere_in_vain() throws IOException {
        for (String name : names) {
            window.show(new Setting(360, Setting.Look.LIGHT));
            window.open(name);
            assertThat(window.console()).as(name).isEmpty();
            assertThat(window.requestsElsewhere()).as(name).isEmpty();
            assertThat(window.texts("return [...document.images].filter(one => one.complete && !one.naturalWidth)"
                    + ".map(one => one.alt);")).as(name).isEmpty();
            assertThat(Jsoup.parse(folder.resolve(name), "UTF-8").select("[href]").eachAttr("href")).as(name)
                    .allMatch(way -> way.matches("(#|https://|http://|data:image/|mailto:|tel:).*"));
        }
    }

    @Test
    void the_bench_view_of_a_step_sheet_comes_alive_in_it() {
        window.show(new Setting(360, Setting.Look.LIGHT));
        window.open(names.stream().filter(name -> name.contains("tide-table-steps")).findFirst().orElseThrow());
        assertThat(window.texts("return [...document.querySelectorAll('.timer button')].map(one => one.textContent);")).isNotEmpty();
    }
}
