package org.benchleaf.compose.cases;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;

/** Whether steps stand side by side: they are done to different items, and the case tells neither days nor that one waits for the other. */
final class StepsApart {

    private final TreatmentCase treatment;

    private StepsApart(TreatmentCase treatment) {
        this.treatment = treatment;
    }

    /** Whether any two of the steps do. */
    static boolean any(TreatmentCase treatment, List<Step> steps) {
        StepsApart apart = new StepsApart(treatment);
        return steps.stream().anyMatch(one -> steps.stream().anyMatch(other -> apart.are(one, other)));
    }

    private boolean are(Step one, Step other) {
        boolean dated = one.on().isPresent() && other.on().isPresent();
        return !dated && !one.of().isEmpty() && !other.of().isEmpty() && Collections.disjoint(one.of(), other.of())
                && !waitedFor(one, new HashSet<>()).contains(other.id()) && !waitedFor(other, new HashSet<>()).contains(one.id());
    }

    private Set<String> waitedFor(Step step, Set<String> found) {
        step.after().stream().filter(found::add).flatMap(id -> treatment.step(id).stream()).forEach(earlier -> waitedFor(earlier, found));
        return found;
    }
}
