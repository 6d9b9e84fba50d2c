package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.ChangedContent;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** Gathers what the stations of the demo's spring course saved; the file is written by hand. */
class ClassRecordsTest {

    private static final Path RECORD = Path.of("src/test/resources/records/class/station-4.json");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;
    private Path results;

    @BeforeEach
    void copy() throws IOException {
        Files.copy(RECORD, folder.resolve("station-4.json"));
        results = folder.resolve("results/spring-course");
    }

    private int run(String... arguments) {
        return new CommandLine(new RecordsCommand()).setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true))
                .execute(arguments);
    }

    private void change(String from, String to) throws IOException {
        Path file = folder.resolve("station-4.json");
        String before = Files.readString(file);
        Files.writeString(file, before.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to)));
        assertThat(Files.readString(file)).isNotEqualTo(before);
    }

    @Test
    void who_did_a_step_and_how_well_stands_in_the_results() throws IOException {
        assertThat(run(folder.toString())).as(err::toString).isZero();
        Document page = Jsoup.parse(Files.readString(results.resolve("index.html")));
        assertThat(page.select("#work tbody tr").eachText()).singleElement().asString().startsWith("Washing 4 D 2026-04-14T10:55")
                .contains("KL", "the third bath was still yellow", "a fourth bath");
        assertThat(page.select("#marks tbody tr").eachText()).first().asString().contains("Washing 4 D", "met 2 3 KL");
        assertThat(page.select("#readings tbody tr").eachText().stream().map(row -> row.replaceAll("\\p{Z}", " ")))
                .containsExactly("Washing 4 bath 1 pH fresh pH 8.5",
                "Washing 4 bath 1 added 3.1 mL");
        assertThat(page.select("#stations").text()).contains("Station 4 Dora, issue 3").contains("Station 1 nothing handed in");
    }

    /** From the description of a record: of a class's baths times, temperature and each addition, and each change of blotters. */
    @Test
    void additions_times_and_changes_stand_in_the_results() throws IOException {
        change("\"added\": \"3.1 mL\" }\n      ]", "\"additions\": \"limewater 0.4 mL 9:31\", \"temperature\": \"21 °C\","
                + " \"laid in\": \"2026-04-14 09:33\", \"lifted out\": \"2026-04-14 09:57\","
                + " \"read at\": \"2026-04-14 10:01\" }\n      ],\n"
                + "      \"changes\": [{ \"change\": 2, \"changed at\": \"2026-04-14 12:51\", \"colour\": \"white\" }]");
        assertThat(run(folder.toString())).as(err::toString).isZero();
        assertThat(Jsoup.parse(Files.readString(results.resolve("index.html"))).select("#readings tbody tr").eachText().stream()
                .map(row -> row.replaceAll("\\p{Z}", " "))).contains("Washing 4 bath 1 additions limewater 0.4 mL 9:31",
                "Washing 4 bath 1 temperature 21 °C", "Washing 4 bath 1 lifted out 2026-04-14 09:57",
                "Washing 4 change 2 changed at 2026-04-14 12:51", "Washing 4 change 2 colour white").doesNotContain(
                        "Washing 4 change 2 change 2");
    }

    /** The demo states one must at washing, and none at drying. */
    @Test
    void a_trainee_is_practised_where_the_must_was_met() throws IOException {
        assertThat(run(folder.toString())).isZero();
        assertThat(standing("D", "Washing")).contains("practised; still with the supervisor");
        assertThat(standing("D", "Drying")).contains("not known");
        assertThat(standing("A", "Washing")).contains("not known", "lowers a misted sheet");
    }

    @Test
    void a_class_may_ask_for_more() throws IOException {
        Path content = folder.resolve("studio");
        ChangedContent.copy(Path.of("content"), content);
        Path course = content.resolve("classes/spring-course.yaml");
        Files.writeString(course, Files.readString(course) + "practised when: {times: 2, help next time: 2}\n");
        run(folder.toString(), "--content", content.toString());
        assertThat(standing("D", "Washing")).contains("not yet");
        Files.copy(RECORD, folder.resolve("station-4-again.json"));
        run(folder.toString(), "--content", content.toString());
        assertThat(standing("D", "Washing")).contains("practised; still");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "\"help next time\": 3 | \"help next time\": 2",
        "\"met\": \"met\"      | \"met\": \"not yet\"",
        "\"assessor\": \"KL\"  | \"assessor\": \"d\"",
        "\"met\": \"met\", | ''",
    })
    void too_much_help_no_assessor_or_no_mark_do_not_count(String from, String to) throws IOException {
        change(from, to);
        assertThat(run(folder.toString())).as(err::toString).isZero();
        assertThat(standing("D", "Washing")).contains("not yet", "lowers a misted sheet");
    }

    private String standing(String trainee, String step) throws IOException {
        return Jsoup.parse(Files.readString(results.resolve("index.html"))).select("#standing tbody tr").eachText().stream()
                .filter(row -> row.startsWith(trainee + " " + step)).findFirst().orElseThrow();
    }

    /** A spreadsheet takes '=' for the start of a formula (OWASP, CSV injection). */
    @Test
    void the_tables_hold_the_same_and_start_no_formula() throws IOException {
        run(folder.toString());
        assertThat(results.resolve("work.csv")).content().contains("'=the stamp stayed sharp").contains("a fourth bath");
        assertThat(results.resolve("marks.csv")).content().contains("lowers a misted sheet on its carrier into the bath,met,2,3,KL");
    }

    @Test
    void only_the_owner_can_read_the_results() throws IOException {
        run(folder.toString());
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(results))).isEqualTo("rwx------");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(results.resolve("index.html")))).isEqualTo("rw-------");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(results.resolve("work.csv")))).isEqualTo("rw-------");
    }

    @ParameterizedTest
    @CsvSource({"edition.json", "studio.yaml"})
    void nothing_is_written_where_others_read(String mark) throws IOException {
        Files.writeString(folder.resolve(mark), "{}");
        assertThat(run(folder.resolve("station-4.json").toString())).isEqualTo(2);
        assertThat(err.toString()).contains("--results");
        assertThat(results).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "\"issue\": 3              | \"issue\": 2              | RECORD-001 | 0",
        "\"station\": 4            | \"station\": 9            | RECORD-003 | 0",
        "lowers a misted sheet     | lifts a misted sheet      | RECORD-004 | 0",
        "spring-course             | sprung-course             | RECORD-005 | 1",
        "\"help today\": 2         | \"help today\": 7         | FORM-004   | 1",
        "\"added\": \"3.1 mL\"     | \"added\": \"3.1\"        | FORM-014   | 1",
        "\"added\": \"3.1 mL\"     | \"temperature\": \"3 mL\"  | FORM-016   | 1",
    })
    void what_is_odd_in_a_record_is_told_with_its_place(String from, String to, String code, int end) throws IOException {
        change(from, to);
        assertThat(run(folder.toString())).isEqualTo(end);
        assertThat(err.toString()).containsPattern("station-4\\.json:\\d+:\\d+: \\w+ " + code);
        assertThat(Files.exists(results.resolve("index.html"))).isEqualTo(end == 0);
    }

    @Test
    void two_files_of_one_station_are_both_listed() throws IOException {
        Files.copy(RECORD, folder.resolve("station-4-later.json"));
        assertThat(run(folder.toString())).isZero();
        assertThat(err.toString()).contains("RECORD-002");
        assertThat(Jsoup.parse(Files.readString(results.resolve("index.html"))).select("#work tbody tr")).hasSize(2);
    }

    /** The others are gathered; the faulty one stays where it is and is told. */
    @Test
    void one_bad_file_keeps_no_other_from_the_results() throws IOException {
        Files.writeString(folder.resolve("bad.json"), "{{{");
        assertThat(run(folder.toString())).isEqualTo(1);
        assertThat(err.toString()).contains("bad.json:1");
        assertThat(results.resolve("index.html")).exists();
        assertThat(folder.resolve("bad.json")).hasContent("{{{");
    }
}
