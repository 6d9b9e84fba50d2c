package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.benchleaf.ChangedContent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** A draft asks only what is written to be right, lists the rest, and stops no other case. */
class UnfinishedCasesTest {

    private static final Path SOUND = Path.of("src/test/resources/sound/base");
    private static final Clock DAY = Clock.fixed(Instant.parse("2026-06-01T10:00:00Z"), ZoneOffset.UTC);
    private static final String LEAST = "---\npublication: {state: draft}\n---\n";

    @TempDir
    private Path folder;
    private Path content;
    private Path draft;
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void a_finished_case_and_a_draft() throws IOException {
        content = folder.resolve("content");
        ChangedContent.copy(SOUND, content);
        ChangedContent.copy(content.resolve("cases/tide"), content.resolve("cases/ebb"));
        draft = content.resolve("cases/ebb/case.md");
        change(text -> text.replace("state: cleared", "state: draft"));
    }

    @Test
    void a_case_that_only_says_that_it_is_a_draft_passes_and_lists_what_is_needed() throws IOException {
        Files.writeString(draft, LEAST);
        Files.delete(draft.resolveSibling("case.es.md"));
        assertThat(check()).isZero();
        assertThat(listed()).hasSize(7).anyMatch(line -> line.contains("'title' is not yet known"))
                .anyMatch(line -> line.contains("'steps' is not yet known"))
                .anyMatch(line -> line.contains("'publication › licence' is not yet known"));
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void the_list_is_in_the_order_of_work() throws IOException {
        change(text -> text.replaceFirst("title: .*", "title:").replace("size: {height: 412 mm,", "size: {height: not yet known,")
                .replaceFirst("depth: \\d+ mm", "depth: not yet known")
                .replaceFirst("licence: CC-BY-4.0", "licence: not yet known")
                .replaceFirst("dwell: 180 min, result: stable", "dwell: not yet known, result: not yet known"));
        assertThat(check()).as(err.toString()).isZero();
        assertThat(listed().stream().map(line -> line.replaceAll(".*'(.*)' is not yet known.*", "$1"))).containsExactly("title",
                "object › size › height", "publication › licence", "tests › number 1 › dwell", "tests › number 1 › result",
                "steps › wash › bath › depth");
    }

    /** The publication of these cuttings tells of a test and not of its liquid: one line for all that rests on it. */
    @Test
    void what_a_publication_leaves_open_has_a_line_for_each_missing_fact_in_check_and_publish() throws IOException {
        Path retold = folder.resolve("retold");
        ChangedContent.copy(Path.of("src/test/resources/newcomer"), retold);
        Path file = retold.resolve("cases/cuttings/case.md");
        Files.writeString(file, Files.readString(file).replace("steps:\n  - id: wash",
                "tests:\n  - {of: text, with: not known (no liquid is named), result: stable}\n\nsteps:\n  - id: wash"));
        for (boolean publishing : List.of(false, true)) {
            StringWriter out = new StringWriter();
            StringWriter err = new StringWriter();
            CommandLine line = new CommandLine(publishing ? new PublishCommand() : new CheckCommand());
            List<String> words = new ArrayList<>(List.of("--content", retold.toString()));
            words.addAll(publishing ? List.of("--site", folder.resolve("site").toString(), "--on", "2026-11-27") : List.of());
            assertThat(line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err)).execute(words.toArray(String[]::new)))
                    .as(err.toString()).isZero();
            assertThat(out.toString().lines().filter(one -> one.contains("the liquid of a test of 'text' is not given"))).singleElement()
                    .asString().contains("steps 'wash', 'alkalize'");
            assertThat(err.toString()).doesNotContain("the liquid of a test of 'text' is not given");
        }
    }

    @Test
    void what_is_written_in_a_draft_must_be_right() throws IOException {
        change(text -> text.replaceFirst("title: .*", "title: not yet known").replace("thickness: 0.11 mm", "thickness: 0.11")
                .replace("grain: along the height", "grian: not yet known"));
        assertThat(check()).isOne();
        assertThat(err.toString()).contains("FORM-014", "FORM-001").doesNotContain("FORM-002");
    }

    @Test
    void what_rules_and_figures_will_ask_is_listed_and_no_error() throws IOException {
        change(text -> text.replace("temperature: 21 °C", "temperature: 65 °C"));
        assertThat(check()).isZero();
        assertThat(listed()).singleElement().asString().contains("RULE-BATH-ABOVE-60");
    }

    @ParameterizedTest
    @ValueSource(strings = {"depth: not yet known", "depth: 25 parsecs", "nonsense: [", "temperature: 65 °C"})
    void nothing_in_a_draft_stops_the_edition(String written) throws IOException {
        change(text -> text.replaceFirst("depth: \\d+ mm", written));
        assertThat(publish()).as(err.toString()).isZero();
        assertThat(out.toString()).contains("cases/ebb/case.md is a draft, which is never published (advice CONS-001).", "DRAFT-003");
        assertThat(err.toString()).doesNotContain(": error ");
        assertThat(folder.resolve("site/cases/tide/index.html")).exists();
        assertThat(folder.resolve("site/cases/ebb")).doesNotExist();
    }

    @Test
    void the_same_slip_in_a_case_that_is_no_draft_stops_it() throws IOException {
        change(text -> text.replace("state: draft", "state: cleared").replaceFirst("depth: \\d+ mm", "depth: not yet known"));
        assertThat(publish()).isOne();
        assertThat(err.toString()).contains("FORM-026");
    }

    @Test
    void the_words_for_a_missing_value_are_nobody_s_name() throws IOException {
        change(text -> text.replace("owner: Halcyon Brandreth-Voss", "owner: not known (sold without a paper)")
                .replaceFirst("people: \\[.*\\]", "people: [not yet known]").replaceFirst("value: 1450.*", "value: withheld"));
        Path other = content.resolve("cases/tide/case.md");
        Files.writeString(other, Files.readString(other) + "\nThe maker is not known; what it was worth is withheld, and the"
                + " buyer not yet known: it was sold without a paper.\n");
        assertThat(check()).as(err.toString()).isZero();
        assertThat(publish()).as(err.toString()).isZero();
    }

    private void change(UnaryOperator<String> change) throws IOException {
        String before = Files.readString(draft);
        assertThat(change.apply(before)).isNotEqualTo(before);
        Files.writeString(draft, change.apply(before));
    }

    private List<String> listed() {
        return out.toString().lines().filter(line -> line.startsWith("  [ ] ")).toList();
    }

    private int check() {
        return run(new CommandLine(new CheckCommand(DAY)), "--content", content.toString());
    }

    private int publish() {
        return run(new CommandLine(new PublishCommand()), "--content", content.toString(), "--site",
                folder.resolve("site").toString(), "--on", "2026-06-01");
    }

    private int run(CommandLine line, String... words) {
        return line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err)).execute(words);
    }
}
