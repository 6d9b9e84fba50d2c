package org.benchleaf.derive.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;

/**
 * Weights of one mass that the steps of one sheet lay on.
 *
 * @param mass of one, as it is told
 * @param count the most that one step lays on, since a later step takes the same ones
 * @param steps ids of the steps that use them
 */
public record Weights(String mass, int count, List<String> steps) {

    public Weights {
        steps = List.copyOf(steps);
    }

    /** The weights of a mass on record that steps name, in the order in which they name them. */
    public static List<Weights> of(List<Step> steps) {
        Map<String, Weights> byMass = new LinkedHashMap<>();
        steps.forEach(step -> step.part(Part.Press.class).ifPresent(press -> press.mass().map(Reading::of).ifPresent(mass ->
                byMass.merge(mass, new Weights(mass, press.weights(), List.of(step.id())), Weights::with))));
        return List.copyOf(byMass.values());
    }

    private Weights with(Weights later) {
        List<String> both = new ArrayList<>(steps);
        both.addAll(later.steps);
        return new Weights(mass, Math.max(count, later.count), both);
    }
}
