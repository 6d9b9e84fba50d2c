package org.benchleaf.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.derive.Deriver;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Library;
import org.benchleaf.model.Matrix;
import org.benchleaf.model.Rule;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;
import org.benchleaf.read.RuleBook;
import org.benchleaf.read.RuleReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a studio changes and adds in its own rules.yaml. */
class StudioRulesTest {

    @TempDir
    private Path content;

    @Test
    void a_change_alters_the_rule_and_keeps_its_reason_for_the_page() {
        Rule changed = rule(book("""
                changes:
                  - rule: blotters-changed-early
                    severity: advice
                    says: The first change is within 30 min.
                    needs: {at most: {blotters.first change: 30 min}}
                    reason: Our blotters are thick.
                """), "blotters-changed-early");
        assertThat(changed.weight()).isEqualTo(Rule.Weight.ADVICE);
        assertThat(changed.statement()).isEqualTo("The first change is within 30 min.");
        assertThat(changed.change()).get().satisfies(change -> {
            assertThat(change.reason()).isEqualTo("Our blotters are thick.");
            assertThat(change.changed()).containsExactly("severity", "says", "needs");
        });
    }

    @Test
    void a_changed_limit_is_the_one_that_counts() {
        Bench.write(content.resolve("rules.yaml"), """
                changes:
                  - {rule: blotters-changed-early, needs: {at most: {blotters.first change: 10 min}}, reason: Thin blotters.}
                """);
        assertThat(spokenOfTheSoundCase()).containsExactly("RULE-BLOTTERS-CHANGED-EARLY");
    }

    @Test
    void a_rule_of_the_studio_speaks_like_any_other_and_is_known_as_its_own() {
        Bench.write(content.resolve("rules.yaml"), """
                terms:
                  a sheet too heavy: {above: {object.grammage: 90 g/m²}}
                rules:
                  - id: heavy-sheets-by-two
                    theme: Our own
                    rule: Heavy sheets are bathed by two people.
                    severity: stop
                    for each: step
                    where: {is: [a sheet too heavy], part: [bath]}
                    needs: {at least: {people: 2}}
                    what: "Step '{step}' bathes a heavy sheet alone."
                    why: Our large sink is deep.
                    fix: "Add 'people: 2'."
                    source: common practice, no source
                    status: practice
                """);
        assertThat(spokenOfTheSoundCase()).containsExactly("RULE-HEAVY-SHEETS-BY-TWO");
        assertThat(rule(RuleReader.read(content, Bench.SHARED, new Messages()), "heavy-sheets-by-two").ofStudio())
                .isTrue();
    }

    @Test
    void a_changed_verdict_keeps_its_reason_and_a_row_of_the_studio_is_used() {
        RuleBook book = book("""
                cells:
                  - {row: printing-ink, action: immersion, verdict: R, reason: Our reds often bleed.}
                rows:
                  - id: silverpoint
                    name: Silverpoint
                    also: [silverpoint]
                    verdicts: {dry-cleaning: R, vapour: A, mist: A, immersion: X, alkali: R, alcohol: A, heat: A, pressure: A}
                    source: common practice, no source
                    status: practice
                """);
        Matrix.Row ink = book.matrix().rowsFor("Printing ink").get(0);
        assertThat(ink.on("immersion")).isEqualTo(Matrix.Verdict.REASON);
        assertThat(ink.on("vapour")).isEqualTo(Matrix.Verdict.ALLOWED);
        assertThat(Optional.ofNullable(ink.changes().get("immersion"))).map(Rule.Change::reason)
                .contains("Our reds often bleed.");
        assertThat(book.matrix().rowsFor("silverpoint").get(0).ofStudio()).isTrue();
        assertThat(spokenOfTheSoundCase()).containsExactly("RULE-PRINTING-INK-IMMERSION");
    }

    @Test
    void a_hole_that_nothing_fills_is_told_before_the_rule_can_speak() {
        Messages messages = new Messages();
        Bench.write(content.resolve("rules.yaml"), """
                rules:
                  - {id: our-own-rule, theme: Ours, rule: A rule., severity: advice, for each: step,
                     what: "Step '{stp}' is odd.", why: It is., fix: Do., source: "common practice, no source", status: practice}
                """);
        RuleReader.read(content, Bench.SHARED, messages);
        assertThat(messages.all()).extracting(Message::code).containsExactly("RULES-002");
    }

    @Test
    void a_studio_cannot_say_that_some_stage_keeps_its_rule() {
        Messages messages = new Messages();
        Bench.write(content.resolve("rules.yaml"), """
                rules:
                  - {id: our-own-rule, theme: Ours, rule: A rule., severity: stop, held by: {stage: pack, how: Somehow.},
                     why: It is., source: "common practice, no source", status: practice}
                """);
        RuleReader.read(content, Bench.SHARED, messages);
        assertThat(messages.all()).extracting(Message::code).contains("RULES-007");
    }

    private List<String> spokenOfTheSoundCase() {
        new Bench(content);
        Library library = LibraryChecker.check(LibraryReader.read(content)).library();
        Path folder = content.resolve("cases/varied");
        Bench.write(folder.resolve("case.md"), Variation.file(Variation.of(List.of(), "{title: A printed sheet}")));
        return CaseChecker.check(CaseReader.read(content, folder), library, Bench.TODAY, new Deriver(library)::ph).messages().all().stream()
                .map(Message::code).toList();
    }

    private RuleBook book(String rules) {
        Messages messages = new Messages();
        Bench.write(content.resolve("rules.yaml"), rules);
        RuleBook book = RuleReader.read(content, Bench.SHARED, messages);
        assertThat(messages.all()).isEmpty();
        return book;
    }

    private static Rule rule(RuleBook book, String id) {
        return book.rules().stream().filter(rule -> rule.id().equals(id)).findFirst().orElseThrow();
    }
}
