package org.benchleaf.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.benchleaf.message.Message;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Holds that cannot be kept are told; what to expect is common practice, no source. */
class HoldCheckTest {

    private static Bench bench;

    @BeforeAll
    static void setUp(@TempDir Path folder) {
        bench = new Bench(folder);
    }

    @Test
    void nobody_releases_alone_what_they_do_themselves() {
        String step = "steps: [{id: clean, by: %s, people: %s, hold: {before: erasing, released by: %s}}]";
        assertThat(told(List.of(), step.formatted("supervisor", 1, "supervisor"))).singleElement().satisfies(message ->
                assertThat(message.what()).isEqualTo("The hold at step 'clean' is released by the supervisor, who does the step."));
        assertThat(told(List.of(), step.formatted("supervisor", 2, "supervisor"))).isEmpty();
        assertThat(told(List.of(), step.formatted("conservator", 1, "supervisor"))).isEmpty();
    }

    @Test
    void a_look_that_lasts_longer_than_a_damp_sheet_may_wait_is_told() {
        String steps = """
                steps:
                  - {id: relax, at most: 15 min}
                  - {id: mend, hold: {before: pasting, released by: supervisor, \
                look: the trial strip, meanwhile: it lies on felt, takes: %s}}
                """;
        assertThat(told(List.of("misted"), steps.formatted("20 min"))).singleElement().satisfies(message ->
                assertThat(message.what()).contains("looking and releasing takes at least 20 min", "may wait 15 min at most",
                        "'at most:' of step 'relax', which left it damp"));
        assertThat(told(List.of("misted"), steps.formatted("15 min"))).isEmpty();
    }

    @Test
    void a_dry_sheet_may_wait_as_long_as_it_takes() {
        assertThat(told(List.of(), """
                steps:
                  - {id: wash, at most: 45 min, takes: 40 min}
                  - {id: mend, hold: {before: pasting, released by: supervisor, look: the trial strip, takes: 2 h}}
                """)).isEmpty();
    }

    @Test
    void a_test_that_only_the_hold_leaves_time_for_is_held_against_its_limit() {
        String hold = "steps: [{id: wash, hold: {at most: 10 min}}]";
        assertThat(told(List.of("fixed"), hold)).singleElement().satisfies(message -> assertThat(message.what())
                .contains("the test of 'text' with 'bath' takes at least 60 min", "may wait 10 min at most", "'at most:' under 'hold:'"));
        assertThat(told(List.of("fixed"), """
                steps:
                  - {id: test-again, kind: testing, do: Test the ink., takes: 1 h, after: [fix], on: 2026-03-17}
                  - {id: wash, after: [test-again], hold: {at most: 10 min}}
                """)).isEmpty();
    }

    private static List<Message> told(List<String> named, String change) {
        return bench.check(Variation.of(named, change)).messages().all().stream()
                .filter(message -> message.code().startsWith("HOLD-")).toList();
    }
}
