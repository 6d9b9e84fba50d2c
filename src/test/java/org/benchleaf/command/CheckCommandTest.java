package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.message.Message;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

class CheckCommandTest {

    private static final Clock DAY = Clock.fixed(Instant.parse("2026-06-01T10:00:00Z"), ZoneOffset.UTC);
    private static final String SOUND = "src/test/resources/sound/base";
    private static final String PUBLISHED = "src/test/resources/published";

    @TempDir
    private Path folder;
    private Path content;
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void a_folder_with_two_faults() throws IOException {
        content = folder.resolve("content here");
        Files.createDirectories(content.resolve("cases/torn"));
        Files.copy(Path.of(SOUND, "studio.yaml"), content.resolve("studio.yaml"));
        Files.writeString(content.resolve("cases/torn/case.md"), "---\ntitle: A \"torn\" sheet\nsummary: 1 < 2\n---\n");
        Files.writeString(content.resolve("glossary.yaml"), "tear:\n  term: tear\n  plain: A break.\n  see: [cut]\n");
    }

    @Test
    void sound_content_ends_with_0_and_a_summary() {
        assertThat(run("--content", SOUND)).isZero();
        // Title, summary, what to do at ten steps, two texts of each of two pictures, a section of the story: counted by hand.
        assertThat(out.toString().lines().map(line -> line.replaceAll("of [0-9]+ texts|[0-9]+ not yet", "…"))).satisfiesExactly(
                line -> assertThat(line).endsWith("cases/tide/case.es.md: … 17 translated, …, 0 changed in the case since."),
                line -> assertThat(line).isEqualTo("1 case checked: no errors, no warnings, no advice."));
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void faulty_content_ends_with_1_and_tells_place_code_excerpt_why_and_what_to_do() {
        assertThat(run("--content", content.toString())).isOne();
        assertThat(err.toString()).contains(content + "/glossary.yaml:4:9: error FORM-030: There is no term 'cut'.",
                "  4 |   see: [cut]\n    |         ^^^", "\n    why: ", "\n    do:  ");
    }

    @Test
    void an_advice_that_is_counted_is_also_printed() {
        assertThat(run("--content", "src/test/resources/newcomer", "long-drawing")).isZero();
        assertThat(out.toString()).contains("1 advice.", "is retold, and its publication leaves");
        assertThat(err.toString()).containsOnlyOnce(": advice ")
                .contains("advice CONS-023: The step sheet and the preparation sheet are not");
    }

    @Test
    void how_many_of_the_studio_s_own_words_a_language_has_is_told() throws IOException {
        Files.writeString(content.resolve("glossary.yaml"), "tear:\n  term: tear\n  plain: A break.\n");
        Files.writeString(content.resolve("words.fr.yaml"), "tear: déchirure\n");
        run("--content", content.toString());
        Files.writeString(content.resolve("words.fr.yaml"), "tear: déchirure\nA break.: Une rupture.\n");
        run("--content", content.toString());
        List<Matcher> told = out.toString().lines().filter(line -> line.contains("words.fr.yaml"))
                .map(Pattern.compile(".*: of (\\d+) texts of the studio (\\d+) translated, (\\d+) not yet, 0 changed since\\.")::matcher)
                .filter(Matcher::matches).toList();
        assertThat(told).extracting(line -> line.group(2)).containsExactly("1", "2");
        assertThat(told).allSatisfy(line -> assertThat(Integer.parseInt(line.group(2)) + Integer.parseInt(line.group(3)))
                .isEqualTo(Integer.parseInt(line.group(1))));
    }

    @ParameterizedTest
    @MethodSource("org.benchleaf.message.Catalogue#all")
    void every_code_of_a_message_is_explained_in_its_own_words(Message.Id id) {
        assertThat(run("--content", SOUND, "--explain", id.code())).isZero();
        assertThat(out.toString()).contains(id.code(), id.what(), id.why(), id.fix());
    }

    @Test
    void the_code_of_a_rule_is_explained_with_its_facts_and_source() {
        assertThat(run("--content", SOUND, "--explain", "rule-bath-above-60")).isZero();
        assertThat(out.toString()).contains("RULE-BATH-ABOVE-60, a rule of the trade", "source:", "facts:");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void a_code_that_there_is_not_is_answered_with_one_like_it() {
        assertThat(run("--content", SOUND, "--explain", "FORM-01")).isEqualTo(2);
        assertThat(err.toString()).contains("no message has the code 'FORM-01'", "did you mean 'FORM-001'?");
    }

    @Test
    void a_path_that_does_not_exist_is_a_wrong_command() {
        assertThat(run("--content", SOUND, SOUND + "/cases/tied")).isEqualTo(2);
        assertThat(err.toString()).contains("there is no file or folder");
    }

    @Test
    void a_case_is_asked_for_by_its_name_alone() throws IOException {
        Files.createDirectories(content.resolve("cases/ebb"));
        Files.writeString(content.resolve("cases/ebb/case.md"), "---\ntitle: Another\n---\n");
        assertThat(run("--content", content.toString(), "torn")).isOne();
        assertThat(err.toString()).contains("cases/torn/case.md").doesNotContain("cases/ebb/case.md");
        assertThat(out.toString()).contains("1 case checked");
    }

    @Test
    void a_name_that_no_case_has_is_a_wrong_command() {
        assertThat(run("--content", SOUND, "tied")).isEqualTo(2);
        assertThat(err.toString()).contains("'tied', and no case of that name");
    }

    /** A line each under the name of the file, and none of them among the messages that have to be answered. */
    @ParameterizedTest
    @ValueSource(strings = {"newspaper-cuttings", "whatman-in-peroxide"})
    void what_a_publication_leaves_open_is_one_list(String name) throws IOException {
        run("--content", PUBLISHED, "--format", "json", name);
        List<String> open = new ArrayList<>();
        new ObjectMapper().readTree(out.toString()).forEach(message -> open.add(message.get("code").asText()));
        out.getBuffer().setLength(0);
        run("--content", PUBLISHED, name);
        List<String> lines = out.toString().lines().dropWhile(line -> !line.contains("is retold")).takeWhile(line -> !line.isEmpty())
                .toList();
        assertThat(lines.get(0)).contains("cases/" + name + "/case.md", "leaves " + (lines.size() - 1) + " open");
        assertThat(lines.subList(1, lines.size())).isNotEmpty()
                .allMatch(line -> line.matches(" {2}line \\d+, [A-Z-]+[0-9A-Z-]*(, [A-Z][0-9A-Z-]+)*: .+"))
                .allSatisfy(line -> {
                    List<String> codes = List.of(line.replaceAll(" {2}line \\d+, ([^:]+):.*", "$1").split(", "));
                    assertThat(open).containsAll(codes);
                    codes.forEach(code -> assertThat(err.toString()).doesNotContain(" " + code + ": "));
                });
    }

    @Test
    void only_the_cases_asked_for_are_checked() {
        assertThat(run("--content", content.toString(), content + "/studio.yaml")).isOne();
        assertThat(err.toString()).contains("FORM-030").doesNotContain("case.md");
    }

    @Test
    void data_names_every_message_with_its_place() throws IOException {
        assertThat(run("--content", content.toString(), "--format", "json")).isOne();
        JsonNode data = new ObjectMapper().readTree(out.toString());
        assertThat(data.isArray()).isTrue();
        data.forEach(message -> assertThat(message.fieldNames()).toIterable().containsExactly("code", "severity",
                "file", "line", "column", "pointer", "what", "why", "fix"));
        assertThat(data).anySatisfy(message -> {
            assertThat(message.path("code").asText()).isEqualTo("FORM-030");
            assertThat(message.path("pointer").asText()).isEqualTo("/tear/see/0");
            assertThat(message.path("line").asInt()).isEqualTo(4);
        });
    }

    /** Schema: OASIS, SARIF Version 2.1.0, as it is published with the standard. */
    @Test
    void the_log_for_editors_is_sarif_by_the_standard_s_own_schema() throws IOException {
        assertThat(run("--content", content.toString(), "--format", "sarif")).isOne();
        JsonNode schema = new ObjectMapper().readTree(
                CheckCommandTest.class.getResourceAsStream("/sarif/sarif-schema-2.1.0.json"));
        JsonNode log = new ObjectMapper().readTree(out.toString());
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7).getSchema(schema).validate(log))
                .isEmpty();
        assertThat(log.at("/runs/0/results")).isNotEmpty();
        assertThat(log.at("/runs/0/results/0/locations/0/physicalLocation/artifactLocation/uri").asText())
                .contains("content%20here");
    }

    private int run(String... words) {
        return new CommandLine(new CheckCommand(DAY)).setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true)).execute(words);
    }
}
