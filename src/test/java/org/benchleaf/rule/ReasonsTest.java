package org.benchleaf.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.check.Checked;
import org.benchleaf.message.Message;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Reason;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What becomes of reasons that answer nothing. */
class ReasonsTest {

    private static Bench bench;

    @BeforeAll
    static void setUp(@TempDir Path folder) {
        bench = new Bench(folder);
    }

    @Test
    void a_reason_for_a_rule_that_is_silent_is_not_needed() {
        assertThat(codes("reasons: [{rule: tap-water-analysed, step: wash, why: There was no other.}]"))
                .containsExactly("REASON-001");
    }

    @Test
    void a_reason_for_a_rule_that_does_not_exist_is_an_error() {
        assertThat(codes("reasons: [{rule: wash-it-well, step: wash, why: There was no other.}]"))
                .containsExactly("REASON-002");
    }

    @Test
    void a_reason_does_not_lift_a_stop() {
        assertThat(codes("""
                object: {consultation: [{matter: sacred}]}
                reasons: [{rule: consultation-closed, why: Nobody answered.}]
                """)).containsExactlyInAnyOrder("REASON-003", "RULE-CONSULTATION-CLOSED");
    }

    private static final String LARGE = "object: {size: {height: 595 mm, width: 420 mm}}\n";
    private static final String UNTOLD =
            "reasons: [{rule: bath-lifted-on-support, step: wash, past: not recorded, why: The book is lost.}]\n";

    @Test
    void a_stop_that_asks_for_the_record_of_a_finished_treatment_is_answered_by_what_the_record_tells() {
        for (Reason.Past past : Reason.Past.values()) {
            Checked checked = bench.check(Variation.of(List.of(), LARGE + UNTOLD.replace("not recorded", '"' + past.word() + '"')));
            assertThat(checked.messages().all()).isEmpty();
            assertThat(Bench.notKept(checked)).singleElement().satisfies(finding -> {
                assertThat(finding.standing().name()).isEqualTo(past.name());
                assertThat(finding.reason()).contains("The book is lost.");
            });
        }
    }

    @Test
    void a_step_that_is_still_to_come_has_no_past() {
        String later = Stream.of("wash", "dry", "mend", "measure", "house").map(id -> "{id: " + id + ", on: 2026-07-01}")
                .collect(Collectors.joining(", ", "steps: [", "]\n"));
        assertThat(codes(LARGE + UNTOLD + later)).contains("REASON-003", "RULE-BATH-LIFTED-ON-SUPPORT");
    }

    @Test
    void a_stop_is_not_answered_by_a_reason_alone_and_its_message_says_how_it_is() {
        Checked checked = bench.check(Variation.of(List.of(), LARGE + UNTOLD.replace("past: not recorded, ", "")));
        assertThat(checked.messages().all()).extracting(Message::code)
                .containsExactlyInAnyOrder("REASON-003", "RULE-BATH-LIFTED-ON-SUPPORT");
        assertThat(checked.messages().all()).extracting(Message::fix).anySatisfy(fix -> assertThat(fix).contains(
                "{rule: bath-lifted-on-support, step: wash, past: not recorded, why: …}", "without sheets for the bench"));
    }

    @Test
    void a_stop_for_hazards_or_consent_is_not_answered_for_the_past() {
        assertThat(codes("""
                object: {consultation: [{matter: sacred}]}
                reasons: [{rule: consultation-closed, past: not recorded, why: The book is lost.}]
                """)).containsExactlyInAnyOrder("REASON-003", "RULE-CONSULTATION-CLOSED");
    }

    @Test
    void the_message_of_a_rule_that_takes_a_reason_says_how_to_record_one() {
        Checked checked = bench.check(Variation.of(List.of(), """
                steps: [{id: wash, bath: {water: {source: tap}}}]
                """));
        assertThat(checked.messages().all()).hasSize(1);
        Message message = checked.messages().all().get(0);
        assertThat(message.what()).endsWith("This needs a stated reason.");
        assertThat(message.fix()).contains("{rule: tap-water-analysed, step: wash, why: …}");
        assertThat(message.place().file()).endsWith("case.md");
        assertThat(message.place().line()).isGreaterThan(1);
    }

    private static final String STRENGTH = "steps: [{id: wash, do: \"Wash in limewater of 0.1 g/L.\"}]\n";
    private static final String PUBLIC = "publication: {permissions: [{for: [treatment, text], from: owner, on: 2026-03-01}]}\n";

    @Test
    void a_strength_in_words_for_the_public_needs_a_reason_which_is_kept() {
        assertThat(codes(STRENGTH + PUBLIC)).containsExactly("CLAIM-006");
        Checked checked = bench.check(Variation.of(List.of(), STRENGTH + PUBLIC
                + "reasons: [{rule: strengths-for-public, why: Every schoolbook has it.}]"));
        assertThat(checked.messages().all()).isEmpty();
        assertThat(Bench.notKept(checked)).extracting(Finding::rule).containsExactly("strengths-for-public");
        assertThat(Bench.notKept(checked).get(0).reason()).contains("Every schoolbook has it.");
    }

    @Test
    void strengths_may_be_named_where_no_public_page_is_permitted_or_the_case_lets_them_out() {
        assertThat(codes(STRENGTH)).isEmpty();
        assertThat(codes(STRENGTH + PUBLIC.replace("{permissions", "{strengths for the public: yes, permissions"))).isEmpty();
    }

    @Test
    void a_reason_for_a_rule_that_a_later_stage_keeps_is_left_to_that_stage() {
        assertThat(codes("reasons: [{rule: chamber-vapour-limit, step: wash, why: There is no flame.}]")).isEmpty();
        assertThat(codes("reasons: [{rule: no-promises, why: It is a quotation.}]")).containsExactly("REASON-001");
    }

    private static List<String> codes(String change) {
        return bench.check(Variation.of(List.of(), change)).messages().all().stream().map(Message::code).toList();
    }
}
