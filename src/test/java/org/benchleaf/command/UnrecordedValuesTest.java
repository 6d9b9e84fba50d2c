package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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

/** What nobody recorded, the times of a treatment or the size of a sheet, stands on no page and in no file. */
class UnrecordedValuesTest {

    private static final Pattern NOTHING = Pattern.compile("(?<![\\d.,])0 (?:s|min|h|d|wk)\\b|\\bPT0S\\b|00:00");

    @TempDir
    private static Path folder;
    private static String told;
    private static final Map<String, String> PAGES = new TreeMap<>();
    private static final Map<String, String> UNSIZED = new TreeMap<>();

    @BeforeAll
    static void publish() throws IOException {
        Path content = folder.resolve("content");
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), content);
        ChangedContent.copy(content.resolve("cases/tide"), content.resolve("cases/ebb"));
        Path file = content.resolve("cases/ebb/case.md");
        Files.writeString(file, Files.readString(file)
                .replaceAll("    takes: .*\n", "    takes: not known (the notebook is lost)\n")
                .replaceAll(", each: \\d+ min|      each: \\d+ min\n", "").replaceAll("    hands-on: .*\n", ""));
        ChangedContent.of(content, Path.of("src/test/resources/faulty/FIG-024/change.txt"), folder.resolve("unsized"));
        ChangedContent.copy(folder.resolve("unsized/cases/tide"), content.resolve("cases/flow"));
        StringWriter err = new StringWriter();
        int code = new CommandLine(new PublishCommand()).setOut(new PrintWriter(new StringWriter()))
                .setErr(new PrintWriter(err)).execute("--content", content.toString(), "--site",
                        folder.resolve("site").toString(), "--on", "2026-06-01");
        told = err.toString();
        assertThat(code).as(told).isZero();
        read("ebb", PAGES);
        read("flow", UNSIZED);
    }

    private static void read(String name, Map<String, String> into) throws IOException {
        Path pages = folder.resolve("site/cases").resolve(name);
        try (Stream<Path> files = Files.walk(pages)) {
            for (Path page : files.filter(each -> each.toString().matches(".*\\.(html|csv|json)")).toList()) {
                into.put(pages.relativize(page).toString(), Files.readString(page, StandardCharsets.UTF_8));
            }
        }
    }

    @Test
    void no_page_or_file_has_a_time_of_nothing() {
        assertThat(PAGES).isNotEmpty().allSatisfy((page, text) -> assertThat(NOTHING.matcher(page.endsWith(".html")
                ? Jsoup.parse(text).text() : text).results().map(found -> text(page, text, found.start()))).as(page).isEmpty());
    }

    /** The sheet of the sound case is 412 mm high and 298 mm wide; its results page tells sizes that were measured. */
    @Test
    void no_page_has_a_size_that_follows_from_none() {
        assertThat(List.of("index.html", "steps.html", "preparation.html")).allSatisfy(page ->
                assertThat(Jsoup.parse(UNSIZED.get(page)).text()).as(page).doesNotContain("412 mm", "the carrier to")
                        .doesNotContainPattern("\\d mm × \\d"));
        assertThat(UNSIZED.get("index.html")).doesNotContain("condition-map__sheet");
        assertThat(UNSIZED.get("figures.json")).doesNotContain("carrier-height", "wash.volume", "dry.pressure");
    }

    @Test
    void the_pages_say_that_the_size_is_not_on_record_and_what_cannot_be_worked_out() {
        assertThat(Jsoup.parse(UNSIZED.get("index.html")).text()).contains("not recorded: framed");
        assertThat(Jsoup.parse(UNSIZED.get("steps.html")).text())
                .contains("cannot be worked out: its size is not recorded: framed");
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
        assertThat(Jsoup.parse(PAGES.get("steps.html")).text()).containsPattern("Hands-on at least \\d");
    }

    @Test
    void an_author_who_says_so_is_not_asked_again() {
        assertThat(told.lines().filter(line -> line.contains("FIG-007"))).as("'wash' alone says nothing")
                .singleElement().asString().contains("'wash'");
    }
}
