package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.ChangedContent;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/**
 * Hands out a class, changes it, and asks what changed. The amounts are worked by hand: six stations of 15 mL with 15 % to spare
 * are 103.5 mL of mist; eight are 138 mL.
 */
class IssueCommandTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;
    @TempDir
    private Path site;
    private Path course;
    private Path issues;

    @BeforeEach
    void copy() throws IOException {
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), folder);
        course = folder.resolve("classes/spring.yaml");
        issues = folder.resolve("classes/spring.issues.yaml");
        Files.writeString(course, Files.readString(course)
                + "publish: yes\nissue: {number: 1, on: 2026-03-30, approved by: head of studio}\npeople: {supervisors: 2}\nshared:\n"
                + Stream.of("hood", "pH meter", "sink", "tray", "board", "weight", "hot plate").map(thing ->
                        "  - {thing: " + thing + ", count: 32}\n").collect(Collectors.joining()));
    }

    private int run(Object command, String... arguments) {
        return new CommandLine(command).setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true)).execute(arguments);
    }

    private int issue() {
        return run(new IssueCommand(), "spring", "--content", folder.toString());
    }

    private void change(String from, String to) throws IOException {
        String before = Files.readString(course);
        Files.writeString(course, before.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to)));
        assertThat(Files.readString(course)).isNotEqualTo(before);
    }

    private Document page() throws IOException {
        assertThat(run(new PublishCommand(), "--content", folder.toString(), "--site", site.toString(), "--on", "2026-04-01"))
                .as(() -> err.toString() + out).isZero();
        return Jsoup.parse(Files.readString(site.resolve("cases/tide/class-spring.html")));
    }

    @Test
    void what_is_handed_out_is_kept_once_and_read_again() throws IOException {
        assertThat(issue()).as(err::toString).isZero();
        assertThat(issues).content().contains("number: 1", "on: 2026-03-30", "mist: ");
        String kept = Files.readString(issues);
        assertThat(issue()).isZero();
        assertThat(issues).hasContent(kept);
        assertThat(run(new CheckCommand(), "--content", folder.toString())).as(() -> err.toString() + out).isZero();
        assertThat(err.toString() + out).doesNotContain("CLASS-012");
    }

    @Test
    void an_issue_that_was_handed_out_stays_as_it_was() throws IOException {
        issue();
        String kept = Files.readString(issues);
        change("stations: 6", "stations: 8");
        assertThat(issue()).isEqualTo(2);
        assertThat(err.toString()).contains("give it a higher number");
        assertThat(issues).hasContent(kept);
        run(new CheckCommand(), "--content", folder.toString());
        assertThat(err.toString() + out).contains("CLASS-012");
    }

    @Test
    void the_class_tells_what_changed_since_the_issue_that_it_replaces() throws IOException {
        issue();
        change("stations: 6", "stations: 8");
        change("number: 1", "number: 2, replaces: 1");
        assertThat(issue()).as(err::toString).isZero();
        assertThat(issues).content().contains("number: 1", "number: 2");
        String mist = page().select("#changes-since-1 tbody tr").eachText().stream().filter(row -> row.contains("misting"))
                .findFirst().orElseThrow().replaceAll("\\p{Z}", " ");
        assertThat(mist).containsPattern("1[01]\\d(\\.\\d)? mL 1[34]\\d(\\.\\d)? mL");
    }

    @Test
    void what_was_not_kept_is_said_to_be_unknown() throws IOException {
        change("number: 1", "number: 2, replaces: 1");
        assertThat(page().select("#changes").text()).contains("was not kept, so it cannot be told");
    }

    @Test
    void a_changed_class_does_not_pass_for_its_issue() throws IOException {
        issue();
        String mark = Files.readString(issues).replaceAll("(?s).*mark: \"(\\w+)\".*", "$1");
        assertThat(page().select(".opening").text()).contains("Mark " + mark + ".").doesNotContain("NOT AS HANDED OUT");
        change("stations: 6", "stations: 7");
        assertThat(page().select(".opening").text()).contains("NOT AS HANDED OUT").doesNotContain(mark);
    }

    @Test
    void a_draft_is_not_handed_out() throws IOException {
        change(", approved by: head of studio", "");
        assertThat(issue()).isEqualTo(2);
        assertThat(err.toString()).contains("approved by");
        assertThat(issues).doesNotExist();
    }

    @Test
    void a_class_that_nobody_knows_is_a_wrong_command() {
        assertThat(run(new IssueCommand(), "autumn", "--content", folder.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("spring");
    }
}
