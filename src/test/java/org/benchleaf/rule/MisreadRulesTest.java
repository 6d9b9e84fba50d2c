package org.benchleaf.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.benchleaf.check.Checked;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cases that rules once read wrongly. */
class MisreadRulesTest {

    private static Bench bench;

    @BeforeAll
    static void setUp(@TempDir Path folder) {
        bench = new Bench(folder);
    }

    @ParameterizedTest
    @ValueSource(strings = {"unsized", "not sized", "waterleaf", "no size", "none"})
    void nobody_is_asked_to_size_a_paper_again_that_was_not_sized(String sizing) {
        assertThat(spoken("object: {support: {sizing: " + sizing + "}}")).doesNotContain("resizing-decided");
    }

    @Test
    void a_bicarbonate_made_from_a_hydroxide_is_not_taken_for_strong_alkali() {
        assertThat(spoken("""
                tests:
                  - {of: text, with: bicarbonate, dwell: 60 min, result: stable}
                  - {of: text, with: paste, dwell: 30 min, result: stable}
                solutions:
                  bicarbonate:
                    name: Bicarbonate
                    dissolve: {solid: calcium-hydroxide, strength: 0.5 g/L, in: carbonated-water}
                  bath: (none)
                steps:
                  - {id: wash, bath: {of: bicarbonate, readings: [{bath: 1, pH fresh: pH 6.4}]}}
                """)).doesNotContain("bath-above-ph-9-5", "bath-above-ph-10-5");
    }

    @Test
    void a_trial_listed_last_is_not_the_last_bath() {
        assertThat(spoken("""
                tests +:
                  - {of: text, with: deionised-water, dwell: 60 min, result: stable}
                steps:
                  - {id: wash, bath: {of: deionised-water}}
                  - id: trial
                    kind: testing
                    do: Bathe a trial sheet.
                    bath: {of: bath, depth: 20 mm, margin: 20 mm, baths: 1, each: 10 min, \
                water: {source: deionised, pH: pH 6, conductivity: 1 µS/cm}}
                    support: {under: film}
                    takes: 10 min
                    after: [look]
                    on: 2026-03-17
                """)).contains("last-bath-carries-calcium");
    }

    @ParameterizedTest
    @ValueSource(strings = {"30 %", "30%", "20 % to 30 %"})
    void an_extent_may_be_a_share_of_the_sheet(String extent) {
        Checked checked = bench.check(Variation.of(List.of(), "condition +:\n  - {id: s1, what: stain, extent: " + extent + "}"));
        assertThat(Bench.otherErrors(checked)).isEmpty();
    }

    @Test
    void an_indicator_of_the_trade_or_of_the_studio_can_be_named_and_answers_the_rule() {
        for (String indicator : List.of("iron(II) strip", "own-strip")) {
            Checked checked = tested(indicator);
            assertThat(Bench.otherErrors(checked)).isEmpty();
            assertThat(Bench.spoken(checked)).doesNotContain("iron-strip-before-moisture", "iron-positive-no-water-adhesive");
        }
        assertThat(Bench.otherErrors(tested("nobodys-strip"))).isNotEmpty();
    }

    private static Checked tested(String indicator) {
        return bench.check(Variation.of(List.of("iron-gall"), """
                tests:
                  - {of: text, with: paste, dwell: 30 min, result: stable}
                  - {of: text, with: %s, result: none}
                  - {of: paper, with: absorption drop, result: takes in}
                """.formatted(indicator)));
    }

    @Test
    void washing_told_without_a_bath_is_asked_what_a_bath_is_asked() {
        assertThat(spoken("""
                steps:
                  - {id: wash, bath: (none), support: (none), uses: [deionised-water], takes: 30 min}
                """)).contains("bath-water-known", "bath-lifted-on-support", "last-bath-carries-calcium",
                "every-liquid-tested");
    }

    @Test
    void paste_under_uses_is_an_adhesive_on_the_ink() {
        assertThat(Bench.spoken(bench.check(Variation.of(List.of("iron-gall"), """
                tests:
                  - {of: text, with: paste, dwell: 30 min, result: stable}
                  - {of: text, with: iron(II) strip, result: strong}
                  - {of: paper, with: absorption drop, result: takes in}
                steps:
                  - {id: mend, mend: (none), uses: [paste]}
                """)))).contains("iron-positive-no-water-adhesive");
    }

    @Test
    void limewater_is_asked_wherever_it_stands() {
        assertThat(spoken("""
                steps:
                  - {id: wash, bath: (none), uses: [lime-water], takes: 30 min}
                """)).contains("bath-above-ph-10-5");
    }

    /** Common practice, no source. */
    @ParameterizedTest
    @ValueSource(strings = {"flaking of the ink before it gets wet", "loose media under magnification", "eraser crumbs are gone"})
    void a_look_at_what_only_the_dry_sheet_shows_comes_before_the_first_liquid(String look) {
        assertThat(Bench.spoken(bench.check(Variation.of(List.of("misted"), """
                steps:
                  - {id: relax, after: [clean]}
                  - {id: mend, after: [relax], hold: {before: pasting, released by: supervisor, look: %s, meanwhile: it lies on felt}}
                """.formatted(look))))).contains("dry-look-before-liquid");
    }

    private static List<String> spoken(String change) {
        return Bench.spoken(bench.check(Variation.of(List.of(), change)));
    }
}
