package org.benchleaf.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How long a liquid touches a medium in all, against sums done by hand. */
class ContactTest {

    private static Bench bench;

    @BeforeAll
    static void setUp(@TempDir Path folder) {
        bench = new Bench(folder);
    }

    @Test
    void a_test_of_one_bath_does_not_cover_three_and_both_times_are_told() {
        String said = told("""
                tests:
                  - {of: text, with: bath, dwell: 25 min, result: stable}
                  - {of: text, with: paste, dwell: 30 min, result: stable}
                steps:
                  - {id: wash, bath: {baths: 3, each: 20 min}}
                """);
        // By hand: 60 min in baths, two changes of the usual 8 min, 15 min under the first blotters; the first filling counts not.
        assertThat(said).contains("91 min", "3 × 20 min with 2 changes of 8 min, 76 min", "until their first change, 15 min",
                "lasted 25 min");
    }

    /** By hand: 20 + 20 + 30 min, two changes of 8 min and 15 min; with the six baths that are allowed, each further one 30 min. */
    @Test
    void baths_of_unlike_length_count_as_each_is_told() {
        String said = told("""
                tests:
                  - {of: text, with: bath, dwell: 25 min, result: stable}
                  - {of: text, with: paste, dwell: 30 min, result: stable}
                steps:
                  - {id: wash, bath: {baths: 3, each: [20 min, 20 min, 30 min]}}
                """);
        assertThat(said).contains("101 min", "20 min + 20 min + 30 min with 2 changes of 8 min, 86 min");
    }

    @Test
    void misting_and_waiting_count_with_a_bath_of_the_same_liquid() {
        String said = told("""
                proposal: {steps +: [prewetting]}
                tests:
                  - {of: text, with: bath, dwell: 45 min, result: stable}
                  - {of: text, with: paste, dwell: 30 min, result: stable}
                steps:
                  - {id: mist, kind: prewetting, do: Mist it., \
                mist: {of: bath, amount: 10 mL}, takes: 5 min, after: [clean], on: 2026-03-17}
                  - {id: look-again, kind: examination, do: Look., takes: 7 min, after: [mist], on: 2026-03-17}
                  - {id: wash, after: [look-again]}
                """);
        assertThat(said).contains("65 min",
                "'mist', 5 min + waiting during 'look-again' 7 min + 'wash', 2 × 15 min with 1 change of 8 min, 38 min");
    }

    @Test
    void changes_as_the_case_tells_them_count_and_filling_does_not() {
        String said = told("""
                tests:
                  - {of: text, with: bath, dwell: 25 min, result: stable}
                  - {of: text, with: paste, dwell: 30 min, result: stable}
                steps:
                  - {id: wash, bath: {baths: 3, each: 20 min, filling: 40 min, changing: 1 min}}
                """);
        assertThat(said).contains("77 min", "3 × 20 min with 2 changes of 1 min, 62 min");
    }

    @Test
    void where_no_test_gives_a_time_it_is_not_called_shorter() {
        String said = told("""
                tests:
                  - {of: text, with: bath, result: stable}
                  - {of: text, with: paste, dwell: 30 min, result: stable}
                """);
        assertThat(said).contains("'dwell:' of the test of 'text' with 'bath' is not given").doesNotContain("shorter time");
    }

    @ParameterizedTest
    @ValueSource(strings = {"slight transfer", "feathers", "runs", "softens", "tideline", "not stable"})
    void whatever_changes_blocks_the_liquid(String result) {
        assertThat(spoken("bath", result)).contains("bleeding-blocks-liquid");
    }

    @ParameterizedTest
    @ValueSource(strings = {"not tested", "not known", "?", "inconclusive"})
    void what_was_not_tested_or_is_not_known_is_no_test(String result) {
        assertThat(spoken("bath", result)).contains("every-liquid-tested");
    }

    @Test
    void an_indicator_that_was_not_read_is_no_result() {
        assertThat(Bench.spoken(bench.check(Variation.of(List.of("iron-gall"), """
                tests:
                  - {of: text, with: paste, dwell: 30 min, result: stable}
                  - {of: text, with: iron(II) strip, result: not tested}
                  - {of: paper, with: absorption drop, result: takes in}
                """)))).contains("iron-strip-before-moisture", "iron-positive-no-water-adhesive");
    }

    private static List<String> spoken(String with, String result) {
        return Bench.spoken(bench.check(Variation.of(List.of(), "tests:\n  - {of: text, with: " + with
                + ", dwell: 60 min, result: \"" + result + "\"}\n  - {of: text, with: paste, dwell: 30 min, result: stable}\n")));
    }

    private static String told(String change) {
        return Bench.rules(bench.check(Variation.of(List.of(), change)))
                .filter(message -> message.code().equals("RULE-TEST-AS-LONG-AS-CONTACT"))
                .findFirst().orElseThrow().what();
    }
}
