package org.benchleaf.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.benchleaf.check.Checked;
import org.benchleaf.message.Message;
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

    private static List<String> codes(String change) {
        return bench.check(Variation.of(List.of(), change)).messages().all().stream().map(Message::code).toList();
    }
}
