package org.benchleaf.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.check.Checked;
import org.benchleaf.message.Message;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Matrix;
import org.benchleaf.model.Rule;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Walks every cell of the matrix with a case that does just that to a medium of that row. */
class MatrixTest {

    /** What does each action, as a change to the sound case without its bath. */
    private static final Map<String, String> DOING = Map.of(
            "dry-cleaning", "{id: act, kind: surface cleaning, do: Brush., cleaning: {tools: [brush]}}",
            "vapour", "{id: act, kind: humidification, do: Wait., chamber: {of: deionised-water, look every: 15 min}, at most: 1 h}",
            "mist", "{id: act, kind: prewetting, do: Mist., mist: {of: deionised-water, amount: 5 mL}, support: {under: film, rigid: yes}}",
            "immersion", "{id: act, kind: rinsing, do: Bathe., bath: {of: plain-calcium, margin: 30 mm, depth: 20 mm, baths: 1, "
                    + "temperature: 21 °C,"
                    + " water: {source: deionised, pH: pH 6, conductivity: 2 µS/cm}}, support: {under: film, rigid: yes}}",
            "alkali", "{id: act, kind: mending, do: Brush it on., uses: [mild-alkali]}",
            "alcohol", "{id: act, kind: mending, do: Brush it on., uses: [cellulose-ether]}",
            "heat", "{id: act, kind: mending, do: Warm it., heat: {tool: warm-spatula, temperature: 45 °C}}",
            "pressure", "{id: act, kind: flattening, do: Press., press: {mass: 20 kg, between: [web]}}");

    private static Bench bench;

    @BeforeAll
    static void setUp(@TempDir Path folder) {
        bench = new Bench(folder);
    }

    static Stream<Arguments> cells(@TempDir Path folder) throws IOException {
        Matrix matrix = new Bench(folder).library.matrix();
        return matrix.rows().stream().flatMap(row -> matrix.actions().stream()
                .map(action -> Arguments.of(row.id(), action.id())));
    }

    @ParameterizedTest
    @MethodSource("cells")
    void a_cell_stops_asks_for_a_reason_or_is_silent_as_its_verdict_says(String rowId, String actionId) {
        Matrix.Row row = row(rowId);
        Checked checked = bench.check(varied(row, actionId, List.of()));
        assertThat(Bench.otherErrors(checked)).isEmpty();
        List<Message> ofTheStep = Bench.rules(checked).filter(message -> message.what().contains("'act'"))
                .filter(message -> aboutTouching(message, row, actionId)).toList();
        switch (row.on(actionId)) {
            case STOP -> assertThat(ofTheStep).isNotEmpty()
                    .anyMatch(message -> !message.what().contains("needs a stated reason"));
            case REASON -> assertThat(ofTheStep).isNotEmpty();
            case ALLOWED, NONE -> assertThat(ofTheStep).isEmpty();
        }
    }

    @Test
    void the_matrix_agrees_with_itself_on_every_row_and_action() {
        Matrix matrix = bench.library.matrix();
        assertThat(matrix.rows()).hasSize(21);
        assertThat(matrix.actions()).extracting(Matrix.Action::id).containsExactlyInAnyOrderElementsOf(DOING.keySet());
        List<String> words = new ArrayList<>();
        for (Matrix.Row row : matrix.rows()) {
            assertThat(row.verdicts().keySet()).as(row.id())
                    .containsExactlyInAnyOrderElementsOf(matrix.actions().stream().map(Matrix.Action::id).toList());
            assertThat(bench.library.sources().keySet()).containsAll(row.backing().sources());
            assertThat(row.backing().sources().isEmpty()).isEqualTo(row.backing().status() != Rule.Backing.Status.READ);
            words.addAll(row.also());
            assertThat(row.also()).allMatch(word -> word.equals(word.toLowerCase(Locale.ROOT)));
        }
        assertThat(words).doesNotHaveDuplicates();
    }

    @Test
    void a_protection_that_was_tested_lifts_a_stop_and_is_shown_to_trainees() {
        Map<String, Object> varied = Variation.of(List.of("fixed"), """
                object: {media: [{id: text, is: stamp-pad ink}]}
                steps: [{id: mend, avoid: [text]}]
                reasons: [{rule: dye-ink-pressure, step: dry, why: Felt spreads the weight.}]
                """);
        Checked checked = bench.check(varied);
        assertThat(Bench.spoken(checked)).isEmpty();
        assertThat(Bench.notKept(checked)).extracting(Finding::rule).contains("dye-ink-immersion", "dye-ink-alkali");
        assertThat(Bench.notKept(checked)).filteredOn(finding -> finding.rule().equals("dye-ink-immersion"))
                .allMatch(Finding::forTrainees).extracting(Finding::reason).containsExactly(Optional.of(
                        "The stamp-pad ink was protected beforehand, by fixing, and was stable when it was tested again."));
    }

    /** A bath of the whole sheet reaches every medium, whatever it is said to avoid: common practice, no source. */
    @Test
    void a_medium_kept_out_of_a_step_is_not_touched_by_it_unless_the_whole_sheet_is_bathed() {
        Map<String, Object> varied = varied(row("dye-ink"), "immersion", List.of("text"));
        assertThat(Bench.spoken(bench.check(varied))).contains("dye-media-kept-dry");

        act(varied).putAll(Map.of("area", "local", "edge", "a frame of dry blotters"));
        assertThat(Bench.spoken(bench.check(varied))).isEmpty();
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> act(Map<String, Object> varied) {
        return ((List<Map<String, Object>>) varied.get("steps")).stream().filter(step -> "act".equals(step.get("id"))).findFirst()
                .orElseThrow();
    }

    @Test
    void a_reason_for_one_step_does_not_answer_another() {
        Map<String, Object> varied = Variation.of(List.of("iron-gall", "damp"), """
                reasons: [{rule: iron-gall-vapour, step: mend, why: It had to open.}]
                """);
        Checked checked = bench.check(varied);
        assertThat(Bench.spoken(checked)).contains("iron-gall-vapour");
        assertThat(checked.messages().all()).extracting(Message::code).contains("REASON-001");
    }

    private static Matrix.Row row(String id) {
        return bench.library.matrix().rows().stream().filter(row -> row.id().equals(id)).findFirst().orElseThrow();
    }

    /** The cell itself, or a rule that answers for it. */
    private static boolean aboutTouching(Message message, Matrix.Row row, String action) {
        String id = message.code().substring("RULE-".length()).toLowerCase(Locale.ROOT);
        return id.equals(row.id() + "-" + action) || bench.library.rules().stream()
                .anyMatch(rule -> rule.id().equals(id) && rule.answersFor().contains(action));
    }

    private static Map<String, Object> varied(Matrix.Row row, String action, List<String> avoid) {
        String step = DOING.get(action).replaceFirst("\\{id: act,", "{id: act, avoid: [" + String.join(", ", avoid)
                + "], takes: 30 min, after: [clean],");
        return Variation.of(List.of("dry"), """
                object: {media: [{id: text, is: "%s", grade: good}]}
                tests:
                  - {of: text, with: deionised-water, dwell: 30 min, result: stable}
                  - {of: text, with: plain-calcium, dwell: 30 min, result: stable}
                  - {of: text, with: mild-alkali, dwell: 30 min, result: stable}
                  - {of: text, with: cellulose-ether, dwell: 30 min, result: stable}
                  - {of: text, with: iron(II) strip, result: none}
                  - {of: paper, with: absorption drop, result: takes in}
                solutions:
                  plain-calcium: {name: Plain, adjust: {liquid: deionised-water, with: lime-water, to: pH 7.0}}
                proposal:
                  steps +: [humidification, prewetting, rinsing, flattening]
                steps:
                  - {id: mend, avoid: [text], after: [act]}
                  - %s
                """.formatted(row.also().get(0), step));
    }
}
