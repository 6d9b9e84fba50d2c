package org.benchleaf.rule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.message.Messages;
import org.benchleaf.message.RuleMessages;
import org.benchleaf.message.Severity;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Library;
import org.benchleaf.model.Matrix;
import org.benchleaf.model.Phrases;
import org.benchleaf.model.Reason;
import org.benchleaf.model.Rule;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;

/** Pairs what spoke with the reasons recorded in the case file. Nothing that spoke is passed over in silence. */
final class Reasons {

    /** So many of one rule at one step have a line each; more are counted in one. */
    private static final int FEW = 2;

    private final TreatmentCase treatment;
    private final Library library;
    private final LocalDate today;
    private final Messages messages = new Messages();
    private final List<Finding> findings;
    private final Set<Reason> used = new HashSet<>();
    /** What a retold case leaves open of a rule at a step. */
    private final Map<String, List<Speaking>> open = new LinkedHashMap<>();

    Reasons(TreatmentCase treatment, Library library, LocalDate today, List<Finding> answered) {
        this.treatment = treatment;
        this.today = today;
        this.library = library;
        this.findings = new ArrayList<>(answered);
        treatment.reasons().stream().filter(reason -> answered.stream().map(Finding::rule)
                .anyMatch(reason.rule()::equals)).forEach(used::add);
    }

    Review answer(List<Speaking> spoken, List<Finding> kept) {
        spoken.forEach(this::answer);
        open.values().forEach(alike -> (alike.size() > FEW ? List.of(alike.get(0).andMore(alike.size() - 1)) : alike)
                .forEach(one -> messages.add(one.openInSource())));
        treatment.reasons().stream().filter(reason -> !used.contains(reason)).forEach(reason -> unused(reason, spoken));
        findings.addAll(kept);
        return new Review(findings, messages);
    }

    private void answer(Speaking speaking) {
        Optional<Reason> recorded = reasonFor(speaking);
        Optional<String> reason = speaking.settled().map(one -> one.words(Phrases.ENGLISH)).or(() -> recorded.map(Reason::why));
        boolean untold = speaking.ground() != Speaking.Ground.NOT_KEPT;
        if (speaking.settled().isEmpty() && recorded.flatMap(Reason::past).isPresent()) {
            add(speaking, reason, speaking.forTrainees(), standing(recorded.flatMap(Reason::past).get()));
            return;
        }
        if (speaking.takesReason() && reason.isPresent()) {
            add(speaking, reason, speaking.forTrainees(), untold ? Finding.Standing.NOT_TOLD : Finding.Standing.ANSWERED);
            return;
        }
        boolean retold = treatment.sources().retelling().isPresent();
        if (speaking.severity() == Severity.ERROR && retold) {
            // What others did is told as they did it; that nobody is led to repeat it is seen to where sheets are made.
            open.computeIfAbsent(speaking.rule() + " " + speaking.step().orElse(""), any -> new ArrayList<>()).add(speaking);
            add(speaking, Optional.empty(), false, Finding.Standing.OPEN_IN_SOURCE);
            return;
        }
        messages.add(retold && untold ? speaking.untoldInSource() : speaking.message());
        if (speaking.severity() != Severity.ERROR) {
            add(speaking, Optional.empty(), false, untold ? Finding.Standing.NOT_TOLD : Finding.Standing.ADVISED);
        }
    }

    private void add(Speaking speaking, Optional<String> reason, boolean forTrainees, Finding.Standing standing) {
        findings.add(new Finding(speaking.rule(), speaking.step(), speaking.read(), reason, forTrainees, standing,
                speaking.settled()));
    }

    private static Finding.Standing standing(Reason.Past past) {
        return switch (past) {
            case NOT_RECORDED -> Finding.Standing.NOT_RECORDED;
            case NOT_WRITTEN_DOWN -> Finding.Standing.NOT_WRITTEN_DOWN;
            case NOT_DONE -> Finding.Standing.NOT_DONE;
        };
    }

    private Optional<Reason> reasonFor(Speaking speaking) {
        Optional<Reason> found = treatment.reasons().stream().filter(reason -> fits(reason, speaking))
                .filter(reason -> counts(reason, speaking)).findFirst();
        found.ifPresent(used::add);
        return found;
    }

    /** Whether a reason of its form answers; what is told of the past answers nothing of a step that is still to come. */
    private boolean counts(Reason reason, Speaking speaking) {
        return reason.past().isEmpty() ? speaking.takesReason()
                : (speaking.takesReason() || speaking.past()) && speaking.step().flatMap(treatment::step).flatMap(Step::on)
                        .filter(day -> !day.isBefore(today)).isEmpty();
    }

    private static boolean fits(Reason reason, Speaking speaking) {
        return reason.rule().equals(speaking.rule())
                && (reason.step().isEmpty() || reason.step().equals(speaking.step()));
    }

    private void unused(Reason reason, List<Speaking> spoken) {
        if (isHeldElsewhere(reason.rule())) {
            return;
        }
        if (known().noneMatch(reason.rule()::equals)) {
            messages.add(RuleMessages.REASON_FOR_UNKNOWN_RULE.at(reason.place(), "rule", reason.rule()));
        } else if (spoken.stream().anyMatch(speaking -> !speaking.takesReason()
                && speaking.weight() == Rule.Weight.STOP && fits(reason, speaking))) {
            messages.add(RuleMessages.REASON_FOR_STOP.at(reason.place(), "rule", reason.rule()));
        } else {
            messages.add(RuleMessages.REASON_NOT_NEEDED.at(reason.place(), "rule", reason.rule()));
        }
    }

    /** Whether a later stage keeps the rule, so that it is seen only there whether the reason is needed. */
    private boolean isHeldElsewhere(String id) {
        return library.rules().stream().anyMatch(rule -> rule.id().equals(id) && rule.heldBy().isPresent()
                && !rule.heldBy().get().stage().equals("check"));
    }

    private Stream<String> known() {
        return Stream.concat(library.rules().stream().map(Rule::id), library.matrix().rows().stream()
                .flatMap(row -> library.matrix().actions().stream().map(action -> Matrix.cellId(row, action))));
    }
}
