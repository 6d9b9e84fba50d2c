package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.ChangedContent;
import org.benchleaf.model.StepKind;
import org.benchleaf.read.FirstStepsReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** A first case from a dozen answers: it passes as a draft at once and, filled in, is published. */
class DraftCommandTest {

    private static final Clock DAY = Clock.fixed(Instant.parse("2026-06-01T10:00:00Z"), ZoneOffset.UTC);
    private static final String OPEN = "not yet known";

    @TempDir
    private Path folder;
    private Path content;
    private Path file;
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void a_studio() throws IOException {
        content = folder.resolve("content");
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), content);
        file = content.resolve("cases/bill/case.md");
    }

    @Test
    void without_any_answer_the_file_passes_as_a_draft() throws IOException {
        assertThat(draft("", "bill")).as(err.toString()).isZero();
        assertThat(err.toString()).isEmpty();
        assertThat(out.toString()).contains("is a draft", "'object › kind' is not yet known");
        assertThat(Files.readString(file)).contains("title: not yet known", "steps: not yet known");
    }

    @ParameterizedTest
    @ValueSource(strings = {"not known", "not known x 298 mm", "412 mm x not known"})
    void a_size_that_nobody_knows_passes_as_a_draft_and_stays_not_known(String size) throws IOException {
        assertThat(draft("", "bill", "--size", size)).as(err.toString()).isZero();
        assertThat(Files.readString(file).lines().filter(line -> line.strip().startsWith("size:")))
                .singleElement().asString().contains("not known");
    }

    @Test
    void a_damage_whose_size_nobody_knows_keeps_that_apart_from_its_place() throws IOException {
        assertThat(draft("", "bill", "--damage", "ink corrosion, inked areas, not known")).as(err.toString()).isZero();
        assertThat(Files.readString(file)).contains("what: ink corrosion, where: inked areas, extent: not known}");
    }

    @Test
    void every_kind_of_step_passes_as_a_draft() {
        List<String> words = new ArrayList<>(List.of("bill"));
        Stream.of(StepKind.values()).forEach(kind -> words.addAll(List.of("--step", kind.word())));
        assertThat(draft("", words.toArray(String[]::new))).as(err.toString()).isZero();
    }

    @Test
    void a_step_that_the_list_lacks_is_taken_as_other() throws IOException {
        assertThat(draft("", "bill", "--step", "examination", "--step", "other", "--step", "other")).as(err.toString()).isZero();
        assertThat(Files.readString(file)).contains(
                "  - id: other\n    kind: other\n    named: not yet known\n    nearest: not yet known\n",
                "  - id: other-2\n");
    }

    /** Leaf and cover are treated side by side, and come together when they are housed. */
    @Test
    void each_item_has_an_order_of_its_own() throws IOException {
        assertThat(draft("", "bill", "--step", "examination", "--step", "washing: the leaf", "--step", "surface cleaning: the cover",
                "--step", "drying: the leaf", "--step", "housing")).as(err.toString()).isZero();
        assertThat(Files.readString(file)).contains("items:\n    - {id: the-leaf, is: the leaf}\n    - {id: the-cover, is: the cover}\n");
        List<String> order = Files.readString(file).lines().filter(line -> line.matches(" +(- id|of|after): .*")).map(String::strip)
                .dropWhile(line -> !line.equals("- id: examination")).toList();
        assertThat(order).containsExactly("- id: examination", "- id: washing", "of: [the-leaf]", "after: [examination]",
                "- id: surface-cleaning", "of: [the-cover]", "after: [examination]", "- id: drying", "of: [the-leaf]", "after: [washing]",
                "- id: housing", "after: [drying, surface-cleaning]");
    }

    @Test
    void a_licence_that_forbids_is_told_at_once() {
        assertThat(draft("", "bill", "--source", "abbey-1995", "--source-licence", "CC-BY-NC-ND-4.0")).as(err.toString()).isZero();
        assertThat(out.toString()).contains("'CC-BY-NC-ND-4.0', does not allow a retelling to be published (CONS-020)");
        assertThat(draft("A bill\nabbey-1995\nCC-BY-ND-4.0\n", "other-bill", "--ask")).as(err.toString()).isZero();
        assertThat(out.toString().split("CC-BY-ND-4.0', does not allow")[0]).doesNotContain("Who retells it");
    }

    @Test
    void what_is_kept_back_is_not_explained_as_published() {
        assertThat(run(new CommandLine(new CheckCommand(DAY)), "--content", content.toString(), "--explain", "CONS-020")).isZero();
        assertThat(out.toString()).contains("CONS-020, warning: what it names is not published").doesNotContain("it is published");
    }

    @Test
    void what_is_asked_in_the_terminal_stands_in_the_file() throws IOException {
        String typed = String.join("\n", "A bill: \"torn\", and mended", "No", "broadside, letterpress", "412 mm x 298 mm",
                "wood pulp, 82 g/m²", "printing ink, black; stamp-pad ink, violet", "tear, right edge, 64 mm; tear, foot, left",
                "close the tears", "examination; mending", "leave it: it is in use", "deionised-water; Mending paste",
                "2026-03-02", "") + "\n";
        assertThat(draft(typed, "bill", "--ask")).as(err + "\n" + out).isZero();
        assertThat(Files.readString(file)).contains("title: \"A bill: \\\"torn\\\", and mended\"",
                "size: {height: 412 mm, width: 298 mm}", "support: {paper: wood pulp, grammage: 82 g/m², state: not yet known}",
                "- {id: printing-ink, is: printing ink, colour: black, state: not yet known}",
                "- {id: tear, what: tear, where: right edge, extent: 64 mm}",
                "- {id: tear-2, what: tear, where: \"foot, left\", extent: not yet known}", "- {option: leave it, why not: it is in use}",
                "- {of: stamp-pad-ink, with: mending-paste, dwell: not yet known, result: not yet known}",
                "  mending-paste:\n    name: Mending paste\n", "approved: 2026-03-02", "owner: not yet known")
                .doesNotContain("deionised-water:", "source:");
    }

    @Test
    void a_kind_of_step_that_is_none_is_asked_again_and_no_answer_is_lost() throws IOException {
        String typed = String.join("\n", "A bill", "No", "broadside, letterpress", "", "", "printing ink, black", "tear, right edge, 64 mm",
                "close the tears", "examination; polishing", "examination; mending", "", "paste", "2026-03-02", "") + "\n";
        assertThat(draft(typed, "bill", "--ask")).as(err + "\n" + out).isZero();
        assertThat(out.toString()).contains("'polishing' is not a kind of step; the kinds are examination, ");
        assertThat(Files.readString(file)).contains("title: A bill", "what: tear", "kind: mending", "approved: 2026-03-02")
                .doesNotContain("polishing");
    }

    @Test
    void what_no_answer_can_mend_is_said_before_anything_is_asked() {
        assertThat(draft("A bill\n", "bill", "--ask", "--step", "polishing")).isEqualTo(2);
        assertThat(draft("A bill\n", "tide", "--ask")).isEqualTo(2);
        assertThat(out.toString()).doesNotContain("What is the case called?");
    }

    @Test
    void a_step_that_changes_the_object_for_good_asks_for_its_risk() throws IOException {
        assertThat(draft("", "bill", "--step", "examination", "--step", "washing", "--step", "mending")).as(err.toString()).isZero();
        assertThat(Files.readString(file)).contains("  risks:\n    washing: not yet known\n\n");
        assertThat(out.toString()).contains(
                "'proposal › risks › washing' is not yet known. Write it, for example 'washing: The stamp may bleed.'");
    }

    /** The kinds of which the rule on lasting change asks a sentence, read from its row without the program. */
    @Test
    void the_risk_is_asked_for_where_the_rule_on_lasting_change_asks_for_it() throws IOException {
        String row = Files.readString(Path.of("src/main/resources/reference/rules.yaml")).split("- id: lasting-change-told")[1];
        List<String> kinds = List.of(row.split("- kind: \\[")[1].split("]")[0].split(", "));
        assertThat(FirstStepsReader.read().entrySet().stream().filter(step -> step.getValue().risky())
                .map(step -> step.getKey().word())).containsExactlyInAnyOrderElementsOf(kinds);
    }

    @Test
    void an_input_that_ends_early_answers_no_more() {
        assertThat(draft("A bill", "bill", "--ask")).isZero();
    }

    @Test
    void filled_in_it_is_published() throws IOException {
        assertThat(draft("", "bill", "--title", "A bill with a loose corner", "--object", "handbill, letterpress",
                "--size", "200 mm x 130 mm", "--paper", "rag, 90 g/m²", "--medium", "printing ink, black",
                "--damage", "surface dirt, overall", "--aim", "make it legible", "--step", "examination",
                "--step", "surface cleaning", "--step", "housing", "--instead", "leave it: the dirt is damp and spreads",
                "--agreed", "2026-03-02")).as(err.toString()).isZero();
        fill("A handbill is cleaned.", "foundation", "CC-BY-4.0", "yes", "2026-03-09", "[sound]", "[sound]", "{family: Quillfeather}",
                "[{family: Lindqvist, given: Tam}]", "30 %",
                "[]", "Look at both sides.", "20 min", "Brush from the middle outward.", "20 min",
                "a clean sponge picks up no more dirt", "[eraser residue]", "[soft-brush]", "Lay it into a folder.", "10 min",
                "[buffered-board]", "yes");
        String text = Files.readString(file).replace("state: draft", "state: cleared");
        Files.writeString(file, text + "\n## What was done\n\nThe bill was brushed.\n");
        assertThat(run(new CommandLine(new PublishCommand()), "--content", content.toString(), "--site",
                folder.resolve("site").toString(), "--on", "2026-06-01")).as(err.toString() + text).isZero();
        assertThat(folder.resolve("site/cases/bill/index.html")).content().contains("A bill with a loose corner");
        assertThat(folder.resolve("site/cases/bill/steps.html")).exists();
    }

    @Test
    void a_case_that_is_retold_begins_with_its_source_and_asks_no_owner() throws IOException {
        assertThat(draft("", "bill", "--source", "abbey-1995", "--source-licence", "CC-BY-4.0", "--read", "the abstract",
                "--step", "washing")).as(err.toString()).isZero();
        assertThat(err.toString()).isEmpty();
        assertThat(Files.readString(file)).contains("  source licence: CC-BY-4.0\n",
                "source:\n  of: abbey-1995\n  retold by: not yet known\n  read: the abstract\n  not read: not yet known\n",
                "    uses: not yet known\n    source: {where: not yet known}\n", "results: not yet known\n")
                .doesNotContain("permissions:", "private:", "tests:", "\n    bath:", "approved:", "risks:");
        assertThat(out.toString()).contains("'source › not read' is not yet known", "'results' is not yet known");
    }

    @Test
    void nothing_but_the_source_of_a_retold_case_is_enough_for_a_draft() throws IOException {
        assertThat(draft("", "bill", "--source", "abbey-1995")).as(err.toString()).isZero();
        assertThat(err.toString()).isEmpty();
        assertThat(Files.readString(file)).contains("  source licence: not yet known\n", "steps: not yet known\n");
        assertThat(out.toString().lines().filter(line -> line.contains("source licence"))).hasSize(1);
    }

    @Test
    void every_kind_of_step_of_a_retold_case_passes_as_a_draft() {
        List<String> words = new ArrayList<>(List.of("bill", "--source", "abbey-1995"));
        Stream.of(StepKind.values()).forEach(kind -> words.addAll(List.of("--step", kind.word())));
        assertThat(draft("", words.toArray(String[]::new))).as(err.toString()).isZero();
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void whoever_retells_is_asked_what_was_read_and_not_what_the_owner_said() throws IOException {
        String typed = String.join("\n", "A map, washed", "abbey-1995", "CC-BY-4.0", "a conservator of this studio",
                "pp. 12 to 19: the tables", "nothing", "map, engraving", "not known", "rag, not known", "printing ink, black",
                "tideline, lower third", "take out acid", "washing", "water of the publication", "") + "\n";
        assertThat(draft(typed, "bill", "--ask")).as(err + "\n" + out).isZero();
        assertThat(Files.readString(file)).contains("retold by: a conservator of this studio",
                "read: \"pp. 12 to 19: the tables\"", "not read: nothing", "size: not known\n",
                "proposal:\n  aims: [take out acid]\n", "  water-of-the-publication:\n    name: water of the publication\n");
        assertThat(out.toString()).doesNotContain("Who owns it?", "When did the owner agree")
                .contains("What was done, in which order?", "'results' is not yet known");
    }

    @Test
    void a_source_that_is_not_in_the_list_is_kept_and_is_told_how_to_enter() throws IOException {
        assertThat(draft("", "bill", "--source", "Fan 2020")).as(err.toString()).isZero();
        assertThat(Files.readString(file)).contains("  of: fan-2020\n");
        assertThat(out.toString()).contains("No source in sources.yaml has the key 'fan-2020'", "fan-2020:\n    author: ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--owner", "--agreed", "--instead"})
    void what_only_an_owner_can_say_is_refused_of_a_retold_case(String option) {
        assertThat(draft("", "bill", "--source", "abbey-1995", option, "2026-03-02")).isEqualTo(2);
        assertThat(err.toString()).contains("'" + option + "' belongs to a treatment of this studio");
        assertThat(file).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(strings = {"--source-licence", "--read", "--not-read", "--retold-by"})
    void what_is_said_of_a_publication_is_refused_without_one(String option) {
        assertThat(draft("", "bill", option, "the abstract")).isEqualTo(2);
        assertThat(err.toString()).contains("'" + option + "' needs '--source'");
        assertThat(file).doesNotExist();
    }

    @Test
    void a_retold_case_filled_in_with_what_its_publication_does_not_tell_is_published() throws IOException {
        assertThat(draft("", "bill", "--title", "A map, washed", "--source", "abbey-1995", "--source-licence", "CC-BY-4.0",
                "--retold-by", "this studio", "--read", "the abstract", "--not-read", "the tables", "--object", "map, not known",
                "--size", "not known", "--paper", "rag, not known", "--step", "washing")).as(err.toString()).isZero();
        fill("A map is washed.", "foundation", "CC-BY-4.0", "yes", "not known", "[]", "[]", "Wash it in deionised water.",
                "not known", "[deionised-water]", "abstract",
                "\n  - {measure: pH, method: not known, before: not known, after: 6.5, source: {where: abstract}}");
        String text = Files.readString(file).replace("state: draft", "state: cleared");
        Files.writeString(file, text + "\n## What was done\n\nThe map was washed.\n");
        assertThat(run(new CommandLine(new PublishCommand()), "--content", content.toString(), "--site",
                folder.resolve("site").toString(), "--on", "2026-06-01")).as(err.toString() + text).isZero();
        assertThat(folder.resolve("site/cases/bill/index.html")).content().contains("A map, washed", "Retold from");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Bill", "../bill", "a b", "tide"})
    void a_name_that_cannot_be_or_is_there_already_writes_nothing(String name) throws IOException {
        String before = Files.readString(content.resolve("cases/tide/case.md"));
        assertThat(draft("", name)).isEqualTo(2);
        assertThat(err.toString()).contains("draft: error: ");
        assertThat(content.resolve("cases/tide/case.md")).content().isEqualTo(before);
        assertThat(content.resolve("cases")).isDirectoryNotContaining(path -> !path.endsWith("tide"));
    }

    @Test
    void a_kind_of_step_that_is_none_is_answered_with_the_kinds() {
        assertThat(draft("", "bill", "--step", "polishing")).isEqualTo(2);
        assertThat(err.toString()).contains("'polishing' is not a kind of step", "surface cleaning");
        assertThat(file).doesNotExist();
    }

    /** Puts values where something is open, in the order of the file. */
    private void fill(String... values) throws IOException {
        String text = Files.readString(file);
        for (String value : values) {
            assertThat(text).as("for " + value).contains(OPEN);
            text = text.replaceFirst(OPEN, value);
        }
        assertThat(text).doesNotContain(OPEN);
        Files.writeString(file, text);
    }

    private int draft(String typed, String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--content", content.toString()));
        return run(new CommandLine(new DraftCommand(DAY, new BufferedReader(new StringReader(typed)))),
                all.toArray(String[]::new));
    }

    private int run(CommandLine line, String... words) {
        return line.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true)).execute(words);
    }
}
