package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.ChangedContent;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** A treatment told without times is published without one that nobody gave. */
class UntimedTreatmentTest {

    private static final Pattern NOTHING = Pattern.compile("(?<![\\d.,])0 (?:s|min|h|d|wk)\\b|\\bPT0S\\b|00:00");

    @TempDir
    private static Path folder;
    private static String told;
    private static final Map<String, String> PAGES = new TreeMap<>();

    @BeforeAll
    static void publish() throws IOException {
        Path content = folder.resolve("content");
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), content);
        ChangedContent.copy(content.resolve("cases/tide"), content.resolve("cases/ebb"));
        Path file = content.resolve("cases/ebb/case.md");
        Files.writeString(file, Files.readString(file)
                .replaceAll("    takes: .*\n", "    takes: not known (the notebook is lost)\n")
                .replaceAll(", each: \\d+ min|      each: \\d+ min\n", "").replaceAll("    hands-on: .*\n", ""));
        StringWriter err = new StringWriter();
        int code = new CommandLine(new PublishCommand()).setOut(new PrintWriter(new StringWriter()))
                .setErr(new PrintWriter(err)).execute("--content", content.toString(), "--site",
                        folder.resolve("site").toString(), "--on", "2026-06-01");
        told = err.toString();
        assertThat(code).as(told).isZero();
        Path pages = folder.resolve("site/cases/ebb");
        try (Stream<Path> files = Files.walk(pages)) {
            for (Path page : files.filter(each -> each.toString().matches(".*\\.(html|csv|json)")).toList()) {
                PAGES.put(pages.relativize(page).toString(), Files.readString(page, StandardCharsets.UTF_8));
            }
        }
    }

    @Test
    void no_page_or_file_has_a_time_of_nothing() {
        assertThat(PAGES).isNotEmpty().allSatisfy((page, text) -> assertThat(NOTHING.matcher(page.endsWith(".html")
                ? Jsoup.parse(text).text() : text).results().map(found -> text(page, text, found.start()))).as(page).isEmpty());
    }

    private static String text(String page, String text, int at) {
        String words = page.endsWith(".html") ? Jsoup.parse(text).text() : text;
        return words.substring(Math.max(0, at - 60), Math.min(words.length(), at + 40));
    }

    @Test
    void the_step_sheet_says_that_times_are_not_on_record_and_why() {
        assertThat(Jsoup.parse(PAGES.get("steps.html")).text())
                .contains("time not recorded: the notebook is lost", "when the steps before it are done");
    }

    @Test
    void the_case_study_and_the_strip_say_so_too() {
        assertThat(Jsoup.parse(PAGES.get("index.html")).text()).contains("time not recorded: the notebook is lost");
        assertThat(PAGES.values()).anyMatch(text -> text.contains("not recorded") && text.contains("times-chart"));
    }

    @Test
    void what_is_known_is_told_as_the_least() {
        assertThat(Jsoup.parse(PAGES.get("steps.html")).text()).containsPattern("without nights at least \\d");
    }

    @Test
    void an_author_who_says_so_is_not_asked_again() {
        assertThat(told.lines().filter(line -> line.contains("FIG-007"))).as("'wash' alone says nothing")
                .singleElement().asString().contains("'wash'");
    }
}
