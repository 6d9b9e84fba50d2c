package org.benchleaf.compose.part;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.benchleaf.derive.figure.UsedThings;
import org.benchleaf.model.Library;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;

/** Finds which of the studio's materials a case names: in its recipes, its steps and their parts. */
public final class Materials {

    private Materials() {
    }

    /** Ids of materials in the order in which the case first names them. */
    public static Set<String> used(TreatmentCase treatment, Library library) {
        Set<String> ids = new LinkedHashSet<>();
        treatment.solutions().forEach(solution -> ids.addAll(solution.recipe().ingredients()));
        treatment.steps().forEach(step -> ids.addAll(of(step)));
        ids.retainAll(library.materials().keySet());
        return ids;
    }

    /** Every id that a step names, of solutions too. */
    public static List<String> of(Step step) {
        Set<String> ids = new LinkedHashSet<>(step.uses());
        ids.addAll(UsedThings.of(step));
        return List.copyOf(ids);
    }
}
