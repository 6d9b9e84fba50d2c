package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.ChangedContent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.yaml.snakeyaml.Yaml;
import picocli.CommandLine;

/** Turns what a phone saved into lines that a YAML parser and the checker of case files understand. */
class RecordsCommandTest {

    private static final Path RECORD = Path.of("src/test/resources/records/washing.json");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    private int run(Object command, String... arguments) {
        return new CommandLine(command).setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true))
                .execute(arguments);
    }

    @Test
    void what_was_written_down_becomes_steps_of_the_case_file() {
        assertThat(run(new RecordsCommand(), RECORD.toString())).as(err::toString).isZero();
        Map<String, List<Map<String, Object>>> front = new Yaml().load(new StringReader(out.toString()));
        List<Map<String, Object>> steps = front.get("steps");
        assertThat(steps).extracting(step -> step.get("id")).containsExactly("look", "wash", "dry");
        assertThat(steps.get(0)).containsOnlyKeys("id");
        assertThat(steps.get(1)).extractingByKey("bath").isEqualTo(Map.of("readings", List.of(
                reading(1, "7.2", "48", "straw, yellow", "3.1"), reading(2, "8.0", "19", "clear", "2.9"),
                reading(3, "8.4", "9", "clear", "3.0"))));
        assertThat(steps.get(2)).extractingByKey("weighing").isEqualTo(Map.of("dry", "9.6 g", "wet", "24.4 g"));
        assertThat(out.toString()).contains("# released by AB (supervisor), 2026-03-17 10:02")
                .contains("# begun 2026-03-17 10:05").contains("# ended 2026-03-17 11:25")
                .contains("# seen not as expected: a fourth tear under: the tape");
    }

    /** The case file has no key for them, and a reader of it wants them all the same. */
    @Test
    void looks_and_the_masses_of_days_stand_in_remarks() throws IOException {
        Path record = Files.writeString(folder.resolve("record.json"), """
                {"case": "tide-table", "steps": [
                  {"step": "wash", "looks": [{"look": 1, "what": "Bath 1: colour at 1 min", "at": "2026-03-17 10:06", "after": "1 min",
                    "seen": "no colour"}]},
                  {"step": "dry", "weighing": {"dry": "9.6 g"}, "days": [{"day": 1, "on": "2026-03-18", "mass": "10.4 g"}]}]}
                """);
        assertThat(run(new RecordsCommand(), record.toString())).as(err::toString).isZero();
        assertThat(out.toString()).contains("    # looked Bath 1: colour at 1 min, 2026-03-17 10:06: no colour\n")
                .contains("    # weighed 2026-03-18: 10.4 g\n").contains("    weighing: {dry: 9.6 g}\n");
    }

    private static Map<String, Object> reading(int bath, String used, String conductivity, String colour, String added) {
        return Map.of("bath", bath, "pH fresh", "pH 8.5", "pH used", "pH " + used, "conductivity", conductivity + " µS/cm",
                "colour", colour, "added", added + " mL");
    }

    /** The lines under 'bath' of the washing step take the place of its readings. */
    @Test
    void a_case_into_which_the_readings_are_pasted_is_as_sound_as_before() throws IOException {
        run(new RecordsCommand(), RECORD.toString());
        List<String> readings = out.toString().lines().filter(line -> line.startsWith("        - {bath:")).toList();
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), folder);
        Path file = folder.resolve("cases/tide/case.md");
        String before = Files.readString(file);
        String after = before.replaceFirst("(?m)^      readings:\\R(        - .*\\R)+",
                "      readings:\n" + String.join("\n", readings) + "\n");
        assertThat(readings).hasSize(3);
        assertThat(after).isNotEqualTo(before).contains(readings);
        Files.writeString(file, after);
        out.getBuffer().setLength(0);
        assertThat(run(new CheckCommand(), "--content", folder.toString())).as(() -> err + out.toString()).isZero();
    }

    @Test
    void a_folder_of_records_is_read_in_the_order_of_its_names_and_written_as_data() throws IOException {
        Files.writeString(folder.resolve("b.json"), "{\"case\": \"tide\", \"steps\": []}");
        Files.copy(RECORD, folder.resolve("a.json"));
        assertThat(run(new RecordsCommand(), folder.toString(), "--format", "json")).as(err::toString).isZero();
        List<Map<String, Object>> records = new Yaml().load(new StringReader(out.toString()));
        assertThat(records).hasSize(2);
        assertThat(records.get(0)).containsEntry("sheet", "cb097b7");
        assertThat(records.get(1)).containsOnlyKeys("case", "steps");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "\"pH 8.5\"           | \"8.5 mL\"        | 17:34: error FORM-016",
        "\"as expected\"      | \"as usual\"      | 8:15: error FORM-004",
        "\"2026-03-17 10:05\" | \"five past ten\" | 14:16: error FORM-022",
        "\"9.6 g\"            | \"9.6\"           | 24:28: error FORM-014",
        "\"weighing\"         | \"wieghing\"      | 24:7: error FORM-001",
        "\"case\": \"tide\",  | ''                | 1:1: error FORM-002",
        "{                    | {{{               | error READ-010",
    })
    void a_file_that_is_no_record_is_told_with_its_place_and_gives_no_lines(String from, String to, String told)
            throws IOException {
        Path file = folder.resolve("bad.json");
        String before = Files.readString(RECORD).replace("not as expected", "as expected");
        String after = before.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to));
        Files.writeString(file, after);
        assertThat(after).isNotEqualTo(before);
        assertThat(run(new RecordsCommand(), file.toString())).isEqualTo(1);
        assertThat(err.toString()).contains("bad.json:").contains(told);
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void a_path_without_records_is_a_wrong_command() {
        assertThat(run(new RecordsCommand(), folder.resolve("nothing").toString())).isEqualTo(2);
        assertThat(err.toString()).contains("there is no file or folder");
        assertThat(run(new RecordsCommand(), folder.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("ends in .json");
    }
}
