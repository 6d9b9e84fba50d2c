package org.benchleaf.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.benchleaf.check.Checked;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Severity;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Rule;
import org.benchleaf.read.RuleReader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Walks the rules of the trade: each has a case that makes it speak, alone, and a near miss that does not. */
class EveryRuleTest {

    private static Bench bench;

    @BeforeAll
    static void setUp(@TempDir Path folder) {
        bench = new Bench(folder);
    }

    static Stream<Rule> askedOfTheCase() {
        return shipped().stream().filter(rule -> rule.heldBy().isEmpty());
    }

    static Stream<Rule> answeredByAReason() {
        return askedOfTheCase().filter(rule -> rule.weight() == Rule.Weight.REASON);
    }

    @Test
    void no_rule_speaks_of_the_sound_case() {
        Checked checked = bench.check(Variation.of(List.of(), "{title: A printed sheet}"));
        assertThat(checked.messages().all()).isEmpty();
        assertThat(Bench.notKept(checked)).isEmpty();
        assertThat(checked.findings()).extracting(Finding::rule).contains("bath-lifted-on-support", "every-liquid-tested");
    }

    @ParameterizedTest
    @MethodSource("askedOfTheCase")
    void a_case_that_trips_a_rule_brings_out_that_rule_alone(Rule rule) {
        Checked checked = bench.check(Variation.of(fixture(rule, "trips.yaml")));
        assertThat(Bench.otherErrors(checked)).isEmpty();
        assertThat(Bench.spoken(checked, rule)).containsExactly(rule.id());
        assertThat(Bench.rules(checked).filter(message -> message.code().equals("RULE-" + rule.id().toUpperCase(Locale.ROOT)))
                .map(Message::severity)).containsOnly(
                rule.weight() == Rule.Weight.ADVICE ? Severity.ADVICE : Severity.ERROR);
    }

    @ParameterizedTest
    @MethodSource("askedOfTheCase")
    void a_near_miss_brings_out_no_rule(Rule rule) {
        Checked checked = bench.check(Variation.of(fixture(rule, "near-miss.yaml")));
        assertThat(Bench.otherErrors(checked)).isEmpty();
        assertThat(checked.messages().all().stream().map(Message::code)).noneMatch(code -> code.startsWith("RULE-")
                || code.startsWith("REASON-"));
    }

    @ParameterizedTest
    @MethodSource("answeredByAReason")
    void a_recorded_reason_answers_a_rule_that_takes_one_and_is_kept(Rule rule) {
        Map<String, Object> varied = Variation.of(fixture(rule, "trips.yaml"));
        List<Object> reasons = new ArrayList<>((List<?>) varied.getOrDefault("reasons", List.of()));
        reasons.add(Map.of("rule", rule.id(), "why", "It could not be otherwise."));
        varied.put("reasons", reasons);
        Checked checked = bench.check(varied);
        assertThat(Bench.spoken(checked, rule)).isEmpty();
        assertThat(checked.findings()).filteredOn(finding -> finding.rule().equals(rule.id())).isNotEmpty()
                .allMatch(finding -> finding.reason().filter("It could not be otherwise."::equals).isPresent())
                .allMatch(finding -> finding.forTrainees() == rule.forTrainees());
    }

    @Test
    void what_is_only_advice_is_kept_as_a_finding_without_a_reason() {
        Checked checked = bench.check(Variation.of(Variation.FOLDER.resolve("copper-pipe-after-calcium/trips.yaml")));
        assertThat(Bench.notKept(checked)).singleElement().satisfies(finding -> {
            assertThat(finding.rule()).isEqualTo("copper-pipe-after-calcium");
            assertThat(finding.standing()).isEqualTo(Finding.Standing.ADVISED);
            assertThat(finding.reason()).isEmpty();
        });
    }

    @Test
    void every_rule_is_whole_and_has_no_twin() {
        Set<String> ids = new HashSet<>();
        Set<String> statements = new HashSet<>();
        for (Rule rule : shipped()) {
            assertThat(ids.add(rule.id())).as(rule.id()).isTrue();
            assertThat(statements.add(rule.statement())).as(rule.statement()).isTrue();
            assertThat(rule.id()).matches("[a-z0-9]+(-[a-z0-9]+)+");
            assertThat(rule.statement()).endsWith(".");
            assertThat(rule.why()).endsWith(".");
            if (rule.heldBy().isEmpty()) {
                assertThat(rule.what()).endsWith(".");
                assertThat(rule.fix()).endsWith(".");
            } else {
                assertThat(rule.heldBy().get().stage()).isIn("check", "derive", "compose", "publish", "pack");
            }
        }
    }

    @Test
    void every_rule_names_a_source_that_exists_or_says_that_it_has_none() {
        for (Rule rule : shipped()) {
            assertThat(bench.library.sources().keySet()).as(rule.id()).containsAll(rule.backing().sources());
            if (rule.backing().sources().isEmpty()) {
                assertThat(rule.backing().status()).as(rule.id()).isNotEqualTo(Rule.Backing.Status.READ);
            } else {
                assertThat(rule.backing().status()).as(rule.id()).isEqualTo(Rule.Backing.Status.READ);
            }
        }
    }

    @Test
    void every_folder_of_changes_belongs_to_a_rule() throws IOException {
        Set<String> ids = new TreeSet<>(askedOfTheCase().map(Rule::id).toList());
        try (Stream<Path> entries = Files.list(Variation.FOLDER)) {
            assertThat(entries.filter(Files::isDirectory).map(folder -> folder.getFileName().toString())
                    .filter(name -> !name.equals("content"))).containsExactlyInAnyOrderElementsOf(ids);
        }
    }

    private static Path fixture(Rule rule, String name) {
        return Variation.FOLDER.resolve(rule.id()).resolve(name);
    }

    private static List<Rule> shipped() {
        Messages messages = new Messages();
        List<Rule> rules = RuleReader.read(Path.of("src/test/resources/rules/content"), Bench.SHARED, messages)
                .rules();
        assertThat(messages.all()).isEmpty();
        return rules;
    }
}
