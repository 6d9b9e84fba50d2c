package org.benchleaf.check;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.message.RuleMessages;
import org.benchleaf.model.ComparedMaterial;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Library;
import org.benchleaf.model.MaterialChoice;
import org.benchleaf.model.Reason;
import org.benchleaf.model.SheetWords;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;

/** Tells what speaks against a material that a step brings to this very sheet, and what for it; never which to take. */
final class ChoiceChecks {

    private final TreatmentCase treatment;
    private final Library library;
    private final Messages messages;

    private ChoiceChecks(TreatmentCase treatment, Library library, Messages messages) {
        this.treatment = treatment;
        this.library = library;
        this.messages = messages;
    }

    /** Tells what is to be weighed, and returns what a recorded reason answers. Of a treatment of others nothing is left to choose. */
    static List<Finding> review(TreatmentCase treatment, Library library, Messages messages) {
        ChoiceChecks checks = new ChoiceChecks(treatment, library, messages);
        return treatment.sources().retelling().isPresent() ? List.of() : treatment.steps().stream().flatMap(step ->
                MaterialChoice.of(step, treatment, library).stream().flatMap(choice -> checks.weigh(step, choice))).toList();
    }

    /**
     * Asks only about what the facts of the case decide; a reason may answer what holds of the material on every sheet too. Of neither
     * anything that a rule asks about.
     */
    private Stream<Finding> weigh(Step step, MaterialChoice choice) {
        List<String> told = SheetWords.open(step, choice.id(), treatment, library);
        Predicate<ComparedMaterial.Argument> decided = one -> !one.where().isEmpty();
        Optional<Reason> reason = treatment.reasons().stream().filter(one -> one.rule().equals(MaterialChoice.WEIGHED)
                && (one.step().isEmpty() || one.step().get().equals(step.id()))).findFirst();
        List<ComparedMaterial.Argument> against = choice.arguments(told, false).stream()
                .filter(one -> one.rule().isEmpty() && (reason.isPresent() || decided.test(one))).toList();
        if (against.isEmpty()) {
            return Stream.empty();
        }
        Message message = RuleMessages.WEIGHED_CHOICE.at(step.place(), "step", step.id(), "material", choice.material().name(),
                "against", words(against), "favours", words(choice.arguments(told, true).stream().filter(decided).toList()));
        if (reason.isEmpty()) {
            messages.add(message);
        }
        return reason.stream()
                .map(one -> new Finding(MaterialChoice.WEIGHED, Optional.of(step.id()), message.what(), Optional.of(one.why()), false,
                Finding.Standing.ANSWERED));
    }

    private String words(List<ComparedMaterial.Argument> arguments) {
        return arguments.isEmpty() ? "not told by any source at hand."
                : arguments.stream().map(one -> one.says() + " (" + source(one.source()) + ")").collect(Collectors.joining(" "));
    }

    private String source(String key) {
        return Optional.ofNullable(library.sources().get(key)).map(source -> (source.author() + " " + source.year()).strip())
                .orElse(key);
    }
}
