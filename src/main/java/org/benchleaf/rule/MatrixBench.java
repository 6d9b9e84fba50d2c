package org.benchleaf.rule;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.model.Matrix;
import org.benchleaf.model.Medium;
import org.benchleaf.model.Protection;
import org.benchleaf.model.Rule;

/** Asks the matrix of every medium, and of the support, at every step that touches it. */
final class MatrixBench {

    private final CaseFacts facts;
    private final ConditionAnswers answers;
    private final RuleBench rules;
    private final ReadersNames names;

    MatrixBench(CaseFacts facts, ConditionAnswers answers, RuleBench rules) {
        this.facts = facts;
        this.answers = answers;
        this.rules = rules;
        this.names = new ReadersNames(facts.treatment, facts.liquids);
    }

    Stream<Speaking> cells() {
        return facts.asked(Rule.Subject.TOUCH).stream().flatMap(touch -> facts.library.matrix().actions().stream()
                .flatMap(action -> cells(action, touch, answers.answer(action.is(), touch))));
    }

    private Stream<Speaking> cells(Matrix.Action action, Asked touch, Judgement done) {
        Layer layer = touch.layer().orElseThrow();
        List<Matrix.Row> rows = layer.rows().stream().filter(row -> row.on(action.id()) == Matrix.Verdict.STOP
                || row.on(action.id()) == Matrix.Verdict.REASON).toList();
        if (done.isNo() || rows.isEmpty()) {
            return Stream.empty();
        }
        if (!done.isYes()) {
            return rows.stream().map(row -> question(row, action, touch, done));
        }
        Optional<Protection> settled = action.wet() ? facts.protection(touch.step().orElseThrow(), layer).map(fixing -> new Protection(
                layer.name(), layer.medium().map(Medium::is).orElse(layer.name()), fixing.kind())) : Optional.empty();
        // A rule may answer for a cell, but a protection is always shown: trainees must know what it rests on.
        boolean silent = settled.isEmpty() && rules.answersFor(action.id(), touch);
        return silent ? Stream.empty() : rows.stream().map(row -> cell(row, action, touch, settled));
    }

    /** Whether the step does what a row forbids cannot be told. */
    private Speaking question(Matrix.Row row, Matrix.Action action, Asked touch, Judgement done) {
        String step = touch.step().orElseThrow().id();
        String layer = touch.layer().orElseThrow().name();
        String fact = MissingFact.told(done.missing());
        String what = "Whether step '" + step + "' means " + inSentence(action.name()) + " for '" + layer + "' cannot be told: "
                + fact + ".";
        String read = "It cannot be told whether the step means " + inSentence(action.name()) + " for " + names.of(layer) + ": "
                + MissingFact.read(done.missing(), names::of) + ".";
        return new Speaking(Matrix.cellId(row, action), Rule.Weight.REASON, true, false, Optional.of(step), Optional.empty(),
                Speaking.Ground.PERHAPS, touch.place(), Optional.of(fact), what, read, "In the row \"" + row.name() + "\" the matrix "
                + (row.on(action.id()) == Matrix.Verdict.STOP ? "forbids it." : "allows it only after a passed test."),
                MissingFact.remedies(done.missing()));
    }

    private Speaking cell(Matrix.Row row, Matrix.Action action, Asked touch, Optional<Protection> settled) {
        boolean stop = row.on(action.id()) == Matrix.Verdict.STOP && settled.isEmpty();
        String step = touch.step().orElseThrow().id();
        String layer = touch.layer().orElseThrow().name();
        String verdict = "; in the row \"" + row.name() + "\" the matrix "
                + (row.on(action.id()) == Matrix.Verdict.STOP ? "forbids it." : "allows it only after a passed test.");
        String what = "Step '" + step + "' means " + inSentence(action.name()) + " for '" + layer + "'" + verdict;
        String read = "The step means " + inSentence(action.name()) + " for " + names.of(layer) + verdict;
        String why = "The matrix keeps what the trade has learned of each pair"
                + row.note().map(note -> "; its note on this row: " + note).orElse("") + ".";
        String fix = stop ? "Keep it out of the step with 'avoid:', protect it and test it again, or choose another treatment."
                : "Choose a gentler way, or keep it out of the step with 'avoid:'.";
        return new Speaking(Matrix.cellId(row, action), stop ? Rule.Weight.STOP : Rule.Weight.REASON, true, false,
                Optional.of(step), settled, Speaking.Ground.NOT_KEPT, touch.place(), Optional.empty(),
                Likeness.told(what, "step '" + step + "'", touch, List.of(action.is())),
                Likeness.told(read, "it", touch, List.of(action.is())), why, fix);
    }

    /** A name that begins a heading, as it stands within a sentence. */
    private static String inSentence(String name) {
        return Character.toLowerCase(name.charAt(0)) + name.substring(1);
    }
}
