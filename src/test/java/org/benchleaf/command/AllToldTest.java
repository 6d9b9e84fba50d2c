package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.ChangedContent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** One run tells the faults of every stage, and nothing that only follows from another fault. */
class AllToldTest {

    private static final Path SOUND = Path.of("src/test/resources/sound/base");
    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
    private static final Pattern CODE = Pattern.compile("(?:error|warning|advice) ([A-Z0-9-]+): ");

    /** One fault for each stage: form, reference, story, privacy, claims, pictures, permissions, rules, figures. */
    private static final List<String> FAULTS = List.of(
            "in cases/tide/case.md", "-     mist: {of: mist, amount: 15 mL, tool: sprayer}",
            "+     mist: {of: mist, amount: 15 drops, tool: sprayer}",
            "in cases/tide/case.md",
            "-     blotters: {changes: [15 min, 30 min, 1 h, 3 h, overnight], blotter: blotter-300, layers: 1, wet: 24.4 g, dry: 9.6 g}",
            "+     blotters: {changes: [15 min, 30 min, 1 h, 3 h, overnight], blotter: blotter-301, layers: 1, wet: 24.4 g, dry: 9.6 g}",
            "append cases/tide/case.es.md", "+ ", "+ # Otro título",
            "append cases/tide/case.md", "+ ", "+ Halcyon Brandreth-Voss lent the sheet.",
            "in cases/tide/case.md", "- title: A tide table that had met the tide", "+ title: A tide table, as good as new",
            "in cases/tide/case.md", "-     file: before-raking.jpg", "+     file: nowhere.jpg",
            "in cases/tide/case.md", "-     - {for: [teaching, text, pictures], from: owner, on: 2026-03-09}",
            "+     - {for: [teaching, text, pictures], from: owner, on: 2026-03-09, note: Ask before printing.}",
            "in cases/tide/case.md", "-       temperature: 21 °C", "+       temperature: 65 °C",
            "in cases/tide/case.md",
            "- The tray held {wash.volume} of water for each bath, {wash.total} in all. The water turned straw yellow in the first",
            "+ The tray held {wash.volme} of water for each bath, {wash.total} in all. The water turned straw yellow in the first");
    private static final Set<String> CODES = Set.of("FORM-013", "FORM-030", "READ-026", "LEAK-001", "CLAIM-001",
            "PICT-001", "CONS-009", "RULE-BATH-ABOVE-60", "FIG-001");

    @TempDir
    private Path folder;

    @Test
    void one_check_tells_the_faults_of_every_stage() throws IOException {
        assertThat(checked(changed(FAULTS))).isEqualTo(new TreeSet<>(CODES));
    }

    @Test
    void one_publishing_tells_them_too_and_the_site_s_faults_of_another_case() throws IOException {
        Path content = changed(FAULTS);
        ChangedContent.copy(SOUND.resolve("cases/tide"), content.resolve("cases/ebb"));
        Path ebb = content.resolve("cases/ebb/case.md");
        Files.writeString(ebb, Files.readString(ebb) + "\nSee [the paste](../../glossary.html#nowhere) and"
                + " [the other sheet](../tide/index.html).\n");
        Set<String> expected = new TreeSet<>(CODES);
        expected.add("SITE-009");
        assertThat(published(content)).isEqualTo(expected);
    }

    /** A fault of form in one part, and beside it a fault that a later stage finds in another. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "title: A tide table that had met the tide | title: {a: b} | FORM-003",
        "    temperature: 21 °C |     temperature: 21 C° | FORM-015",
        "        mix: {ethanol: 40 % v/v, | mix: {ethanol: 40 %, | FORM-011",
        "  grammage: 82 g/m² |   grammage: 82 | FORM-014",
        "  - {of: text, with: bath, dwell: 180 min, result: stable} |   - {of: text, with: bath, dwell: 180, result: stable} | FORM-014",
    })
    void what_a_later_stage_finds_elsewhere_is_told(String sound, String faulty, String code) throws IOException {
        Path content = changed(List.of("in cases/tide/case.md", "-     file: before-raking.jpg", "+     file: nowhere.jpg",
                "append cases/tide/case.md", "+ ", "+ The paper was safe. Halcyon Brandreth-Voss lent it."));
        Path file = content.resolve("cases/tide/case.md");
        Files.writeString(file, Files.readString(file).replace(sound.strip(), faulty.strip()));
        assertThat(checked(content)).containsExactlyInAnyOrder(code, "PICT-001", "CLAIM-002", "LEAK-001");
    }

    private Path changed(List<String> lines) throws IOException {
        Path changes = Files.write(folder.resolve("change.txt"), lines);
        return ChangedContent.of(SOUND, changes, folder.resolve("content"));
    }

    private static Set<String> checked(Path content) {
        return codes(check(content));
    }

    private static String check(Path content) {
        StringWriter err = new StringWriter();
        Clock noon = Clock.fixed(DAY.atTime(12, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
        assertThat(new CommandLine(new CheckCommand(noon)).setOut(new PrintWriter(new StringWriter()))
                .setErr(new PrintWriter(err)).execute("--content", content.toString())).isEqualTo(1);
        return err.toString();
    }

    @Test
    void a_person_named_in_a_file_that_cases_share_is_told_there_by_check() throws IOException {
        Path content = changed(List.of("in classes/spring.yaml", "- title: Washing a brittle sheet",
                "+ title: 'Ms Brandreth, worth £1450'", "in glossary.yaml", "-   plain: Bathing a sheet in water.",
                "+   plain: Bathing a sheet in water, as Halcyon Voss and Dr Lindqvist do."));
        String told = check(content);
        assertThat(codes(told)).containsExactly("LEAK-001");
        assertThat(told).contains("/classes/spring.yaml:1:", "'owner'", "'value'", "/glossary.yaml:7:", "'people'");
    }

    private Set<String> published(Path content) {
        StringWriter err = new StringWriter();
        assertThat(new CommandLine(new PublishCommand()).setOut(new PrintWriter(new StringWriter()))
                .setErr(new PrintWriter(err)).execute("--content", content.toString(), "--site",
                        folder.resolve("site").toString(), "--on", DAY.toString())).isEqualTo(1);
        return codes(err.toString());
    }

    private static Set<String> codes(String told) {
        Set<String> codes = new TreeSet<>();
        Matcher code = CODE.matcher(told);
        while (code.find()) {
            codes.add(code.group(1));
        }
        return codes;
    }
}
