package org.benchleaf.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.benchleaf.check.Checked;
import org.benchleaf.derive.Deriver;
import org.benchleaf.model.Rule;
import org.benchleaf.model.TreatmentCase;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Treatments told twice, with {@code uses} alone and with parts, from the same facts: the same rules are asked. */
class RetoldTreatmentsTest {

    private static final Path FOLDER = Path.of("src/test/resources/treatments");

    private static Bench bench;

    @BeforeAll
    static void setUp(@TempDir Path folder) {
        bench = new Bench(folder);
    }

    static Stream<String> treatments() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString().replace(".yaml", "")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("treatments")
    void the_same_rules_are_asked_however_a_treatment_is_told(String treatment) {
        Set<String> uses = asked(treatment, "with uses");
        assertThat(uses).as("rules and cells of the matrix, each with its step").hasSizeGreaterThan(10)
                .containsExactlyInAnyOrderElementsOf(asked(treatment, "with parts"));
    }

    @Test
    void at_least_twenty_treatments_of_many_kinds_are_told_twice() throws IOException {
        assertThat(treatments()).hasSizeGreaterThanOrEqualTo(20);
    }

    /** The rules and cells of the matrix that are asked of something in the case, each with the step that it is asked of. */
    private static Set<String> asked(String treatment, String way) {
        Map<String, Object> root = Variation.told(FOLDER.resolve(treatment + ".yaml"), way);
        Checked checked = bench.check(root);
        assertThat(Bench.otherErrors(checked)).as(way).isEmpty();
        TreatmentCase told = checked.treatment().orElseThrow();
        CaseFacts facts = new CaseFacts(told, bench.library, Bench.TODAY, new Deriver(bench.library).ph(told));
        ConditionAnswers answers = new ConditionAnswers(facts);
        Set<String> asked = new TreeSet<>();
        bench.library.rules().stream().filter(rule -> rule.heldBy().isEmpty()).forEach(rule ->
                facts.asked(rule.speaksOf()).stream().filter(subject -> !answers.answer(rule.where(), subject).isNo())
                        .forEach(subject -> asked.add(rule.id() + step(subject))));
        facts.asked(Rule.Subject.TOUCH).forEach(touch -> bench.library.matrix().actions().stream()
                .filter(action -> !answers.answer(action.is(), touch).isNo())
                .forEach(action -> touch.layer().orElseThrow().rows().forEach(row ->
                        asked.add(row.id() + "-" + action.id() + step(touch)))));
        return asked;
    }

    private static String step(Asked subject) {
        return subject.step().map(step -> " at " + step.id()).orElse("");
    }
}
