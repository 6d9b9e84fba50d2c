package org.benchleaf.words;

import java.util.List;
import java.util.Optional;
import org.benchleaf.model.PrintObject;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.model.Trial;

/**
 * Names a step on a page.
 *
 * @param words of the interface
 * @param treatment the case that the step belongs to
 */
public record StepTitle(Words words, TreatmentCase treatment) {

    /**
     * What the step is, with the arm of a trial or the items that it belongs to, or what it is for where the case has several of its name.
     */
    public String of(Step step) {
        Optional<Trial.Arm> arm = treatment.trials().stream().flatMap(trial -> trial.armOf(step).stream()).findFirst();
        if (arm.isPresent()) {
            return words.say("step.title-arm", "kind", kind(step), "arm", arm.get().is());
        }
        if (!step.of().isEmpty()) {
            return words.say("step.title-items", "kind", kind(step), "items", String.join("; ", items(step)));
        }
        boolean several = treatment.steps().stream().map(this::kind).filter(kind(step)::equals).count() > 1;
        return step.aim().filter(aim -> several)
                .map(aim -> words.say("step.title-for", "kind", kind(step), "aim", aim)).orElse(kind(step));
    }

    /** The items that the step is done to, in words. */
    public List<String> items(Step step) {
        return step.of().stream().map(id -> treatment.object().item(id).map(PrintObject.Item::is).orElse(id)).toList();
    }

    /** What the step is: its own name, or its kind. */
    public String kind(Step step) {
        return step.named().map(Words::capital).orElseGet(() -> words.term("step-kind", step.kind().word()));
    }
}
