package org.benchleaf.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.benchleaf.message.Message;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tries sentences that claim too much, and sentences that are like them and do not. */
class ClaimsTest {

    private static final String NO_EVIDENCE = "object: {made: (none)}\n";
    private static Bench bench;

    @BeforeAll
    static void setUp(@TempDir Path folder) {
        bench = new Bench(folder);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/rules/claims.csv", delimiter = '|', useHeadersInDisplayName = true)
    void a_sentence_is_told_of_or_let_pass(String code, String sentence) {
        List<String> told = claims(NO_EVIDENCE + "summary: '" + sentence + "'");

        if (code.equals("nothing")) {
            assertThat(told).isEmpty();
        } else {
            assertThat(told).containsOnly(code);
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/rules/strengths.csv", delimiter = '|', useHeadersInDisplayName = true)
    void a_strength_is_told_where_the_public_shall_not_read_it(String strength, String sentence) {
        List<String> told = bench.check(Variation.of(List.of(), "publication: {strengths for the public: no, permissions +: ["
                + "{for: [text], from: owner, on: 2026-03-01}]}\nsummary: '" + sentence + "'"))
                .messages().all().stream().filter(message -> message.code().equals("CLAIM-006"))
                .map(message -> message.what().replaceFirst("(?i)^The summary names the strength '(.*?)'.*", "$1")).toList();

        if (strength.equals("nothing")) {
            assertThat(told).isEmpty();
        } else {
            assertThat(told).containsExactly(strength);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"title: W", "summary: W", "condition: [{id: t1, note: W}]", "proposal: {aims +: [W]}",
        "proposal: {options: [{option: wait, why not: W}]}", "solutions: {bath: {name: W}}", "solutions: {bath: {how: [W]}}",
        "steps: [{id: wash, do: W}]", "steps: [{id: wash, see: W}]", "steps: [{id: wash, watch: W}]",
        "steps: [{id: wash, if not: W}]", "steps: [{id: wash, until: W}]", "steps: [{id: wash, aim: W}]"})
    void a_promise_is_found_in_whatever_text_it_stands(String field) {
        assertThat(claims(field.replace("W", "'This is as good as new.'"))).containsOnly("CLAIM-001");
    }

    @Test
    void evidence_for_the_age_of_the_object_answers_every_sentence_on_its_age() {
        assertThat(claims("summary: The sheet was printed in 1893.")).isEmpty();
        assertThat(claims(NO_EVIDENCE + "summary: The sheet was printed in 1893.")).containsExactly("CLAIM-003");
    }

    private static List<String> claims(String change) {
        return bench.check(Variation.of(List.of(), change)).messages().all().stream().map(Message::code)
                .filter(code -> code.startsWith("CLAIM-")).toList();
    }
}
