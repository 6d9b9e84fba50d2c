package org.benchleaf.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.benchleaf.check.Checked;
import org.benchleaf.message.Message;
import org.benchleaf.message.Severity;
import org.benchleaf.model.Finding;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A rule whose facts are missing asks for them; what to expect is common practice, no source. */
class NotToldRulesTest {

    private static Bench bench;

    @BeforeAll
    static void setUp(@TempDir Path folder) {
        bench = new Bench(folder);
    }

    @Test
    void a_bath_of_unknown_temperature_is_asked_about_the_highest_limit_alone() {
        Checked checked = checked(List.of(), "steps: [{id: wash, bath: {temperature: (none)}}]");
        assertThat(Bench.rules(checked)).singleElement().satisfies(message -> {
            assertThat(message.code()).isEqualTo("RULE-BATH-ABOVE-60");
            assertThat(message.severity()).isEqualTo(Severity.WARNING);
            assertThat(message.what()).isEqualTo("Whether this rule is kept at step 'wash' cannot be told: "
                    + "'temperature:' under 'bath:' is not known.");
            assertThat(message.fix()).startsWith("Add 'temperature:' under 'bath:' of step 'wash'.")
                    .contains("{rule: bath-above-60, step: wash, why: …}");
        });
        assertThat(Bench.notKept(checked)).singleElement().satisfies(finding -> {
            assertThat(finding.standing()).isEqualTo(Finding.Standing.NOT_TOLD);
            assertThat(finding.reason()).isEmpty();
        });
    }

    @Test
    void the_question_is_answered_by_a_reason_even_where_the_rule_is_a_stop() {
        Checked checked = checked(List.of(), """
                steps: [{id: wash, bath: {temperature: (none)}}]
                reasons: [{rule: bath-above-60, why: The notes of 1975 give no temperature.}]
                """);
        assertThat(checked.messages().all()).isEmpty();
        assertThat(Bench.notKept(checked)).singleElement().satisfies(finding -> {
            assertThat(finding.standing()).isEqualTo(Finding.Standing.NOT_TOLD);
            assertThat(finding.reason()).contains("The notes of 1975 give no temperature.");
        });
    }

    @Test
    void a_step_without_a_bath_is_asked_for_no_temperature() {
        assertThat(Bench.spoken(checked(List.of("dry"), "{title: Kept dry}"))).isEmpty();
    }

    @Test
    void a_range_on_both_sides_of_a_limit_is_no_pass() {
        assertThat(spoken(List.of(), "steps: [{id: wash, bath: {temperature: 38 °C to 42 °C}}]")).contains("bath-above-40");
        Checked phytate = checked(List.of("phytate"),
                "steps: [{id: phytate, bath: {readings: [{bath: 1, pH fresh: pH 5.9 to 6.4}]}}]");
        assertThat(Bench.rules(phytate).map(Message::what)).anyMatch(what -> what.contains("lies on both sides of the limit"));
    }

    @Test
    void a_range_that_reaches_beyond_a_limit_is_asked_at_its_worst_end() {
        assertThat(spoken(List.of(), "steps: [{id: wash, bath: {temperature: 58 °C to 62 °C}}]")).containsExactly("bath-above-60");
        assertThat(spoken(List.of(), "steps: [{id: wash, bath: {temperature: 38 °C to 40 °C}}]")).isEmpty();
        assertThat(spoken(List.of(), "steps: [{id: dry, blotters: {changes: [15 min to 25 min, 1 h]}}]"))
                .contains("blotters-changed-early");
    }

    @Test
    void ranges_that_overlap_leave_open_which_is_the_heavier() {
        String mend = "object: {support: {grammage: %s}}";
        Checked overlapping = checked(List.of(), mend.formatted("4 g/m² to 100 g/m²"));
        assertThat(Bench.rules(overlapping)).singleElement().satisfies(message -> {
            assertThat(message.code()).isEqualTo("RULE-MEND-WEAKER-THAN-SHEET");
            assertThat(message.what()).contains("'tissue:' under 'mend:'", "'grammage:' under 'support:'", "overlap");
        });
        assertThat(spoken(List.of(), mend.formatted("5 g/m² to 100 g/m²"))).isEmpty();
        assertThat(spoken(List.of(), mend.formatted("3 g/m² to 4 g/m²"))).containsExactly("mend-weaker-than-sheet");
    }

    @Test
    void a_test_of_fifteen_to_sixty_minutes_covers_fifteen() {
        assertThat(spoken(List.of(), """
                tests:
                  - {of: text, with: bath, dwell: 15 min to 60 min, result: stable}
                  - {of: text, with: paste, dwell: 30 min, result: stable}
                """)).containsExactly("test-as-long-as-contact");
    }

    @Test
    void a_meter_whose_calibration_is_not_told_may_be_out_of_order() {
        Checked noBuffers = checked(List.of(), "instruments: [{id: meter, buffers: (none)}]");
        assertThat(Bench.rules(noBuffers)).isNotEmpty().allSatisfy(message -> {
            assertThat(message.code()).isEqualTo("RULE-METER-CALIBRATED-SAME-DAY");
            assertThat(message.what()).contains("cannot be told: 'buffers:' of the instrument 'meter' is not given");
        });
        assertThat(spoken(List.of(), "instruments: [{id: meter, calibrated: (none)}]")).containsExactly("meter-calibrated-same-day");
    }

    @Test
    void an_end_point_is_asked_for_the_colours_that_were_not_read() {
        String readings = "steps: [{id: wash, bath: {readings: %s}}]";
        for (String few : List.of("(none)", "[{bath: 2, colour: clear}]", "[{bath: 1, pH fresh: pH 8.0}]")) {
            assertThat(Bench.rules(checked(List.of(), readings.formatted(few)))).singleElement().satisfies(message -> {
                assertThat(message.code()).isEqualTo("RULE-END-POINT-REACHED");
                assertThat(message.severity()).isEqualTo(Severity.WARNING);
            });
        }
        assertThat(Bench.rules(checked(List.of(), readings.formatted("[{bath: 1, colour: clear}, {bath: 2, colour: yellow}]"))))
                .extracting(Message::severity).containsExactly(Severity.ERROR);
    }

    @Test
    void the_pH_of_a_phytate_bath_that_was_not_read_is_worked_out_where_its_parts_are_known() {
        // Limewater lies far above pH 6.2 by any table; nobody has to read it to see that.
        assertThat(Bench.rules(checked(List.of("phytate"), """
                tests +: [{of: text, with: lime-water, dwell: 60 min, result: stable}]
                steps: [{id: phytate, bath: {of: lime-water, readings: (none)}}]
                """)).filter(message -> message.code().equals("RULE-PHYTATE-PH")).map(Message::what))
                .containsExactly("The pH of the phytate bath at step 'phytate' is outside pH 5.5 to 6.2, or not known. This needs a stated "
                        + "reason.");
    }

    @Test
    void a_chamber_of_unknown_humidity_is_asked_for_it_where_the_ink_is_iron_gall() {
        assertThat(spoken(List.of("iron-gall", "damp"), "steps: [{id: relax, chamber: {humidity: (none)}}]"))
                .contains("iron-gall-above-70-humidity");
        assertThat(spoken(List.of("damp"), "steps: [{id: relax, chamber: {humidity: (none)}}]")).isEmpty();
    }

    @Test
    void a_hydroxide_has_its_pH_worked_out_and_a_bath_of_unknown_make_is_asked_for_it() {
        String tests = """
                tests:
                  - {of: text, with: %s, dwell: 60 min, result: stable}
                  - {of: text, with: paste, dwell: 30 min, result: stable}
                steps: [{id: wash, bath: {of: %s}}]
                """;
        // Saturated limewater lies near pH 12.4, from memory; any table of it lies far above pH 10.5.
        assertThat(Bench.rules(checked(List.of(), tests.formatted("lime-water", "lime-water"))).filter(message ->
                message.code().equals("RULE-BATH-ABOVE-PH-10-5")).map(Message::severity)).containsExactly(Severity.ERROR);
        assertThat(Bench.rules(checked(List.of(), tests.formatted("calcium-phytate", "calcium-phytate"))).filter(message ->
                message.code().equals("RULE-BATH-ABOVE-PH-10-5")).map(Message::severity)).containsExactly(Severity.WARNING);
    }

    @Test
    void each_of_two_liquids_is_asked() {
        assertThat(spoken(List.of("misted"), """
                tests +: [{of: text, with: lime-water, dwell: 60 min, result: stable}]
                steps: [{id: relax, uses: [lime-water]}]
                """)).containsExactly("bath-above-ph-10-5");
        assertThat(Bench.rules(checked(List.of("misted"), """
                tests +: [{of: text, with: calcium-phytate, dwell: 60 min, result: stable}]
                steps: [{id: relax, uses: [calcium-phytate]}]
                """)).map(Message::what)).containsExactly("Whether this rule is kept at step 'relax' cannot be told: "
                        + "'pH fresh:' under 'readings:' under 'bath:' for 'calcium-phytate' is not known.");
    }

    @Test
    void a_medium_whose_state_is_not_told_may_be_friable() {
        assertThat(spoken(List.of(), "object: {media: [{id: text, state: (none)}]}")).containsExactly("friable-kept-from-cleaning");
        assertThat(spoken(List.of("damp"), "object: {media: [{id: text, state: (none)}]}"))
                .contains("not-for-humidifying");
    }

    @Test
    void one_of_sizing_and_drop_test_tells_whether_the_sheet_repels_water() {
        assertThat(spoken(List.of(), "object: {support: {sizing: (none)}}")).contains("prewet-hard-sized", "resizing-decided");
        assertThat(spoken(List.of(), """
                object: {support: {sizing: (none)}}
                tests +: [{of: paper, with: absorption drop, result: takes in}]
                """)).doesNotContain("prewet-hard-sized");
    }

    @Test
    void a_hold_that_says_not_what_to_look_at_may_come_too_late() {
        assertThat(spoken(List.of("misted"),
                "steps: [{id: mend, hold: {before: pasting, released by: supervisor, meanwhile: it lies on felt}}]"))
                .containsExactly("dry-look-before-liquid");
    }

    private static Checked checked(List<String> named, String change) {
        Checked checked = bench.check(Variation.of(named, change));
        assertThat(Bench.otherErrors(checked)).isEmpty();
        return checked;
    }

    private static List<String> spoken(List<String> named, String change) {
        return Bench.spoken(checked(named, change));
    }
}
