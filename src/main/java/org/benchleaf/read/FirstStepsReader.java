package org.benchleaf.read;

import java.util.EnumMap;
import java.util.Map;
import org.benchleaf.model.FirstStep;
import org.benchleaf.model.StepKind;

/** Reads the program's table of what a new step of each kind usually needs. */
public final class FirstStepsReader {

    private static final String TABLE = "/reference/first-steps.yaml";

    private FirstStepsReader() {
    }

    /** What it needs by the kind of step; no entry where a kind needs nothing of its own. */
    public static Map<StepKind, FirstStep> read() {
        Map<StepKind, FirstStep> steps = new EnumMap<>(StepKind.class);
        for (OwnYaml row : OwnYaml.list(TABLE)) {
            StepKind kind = StepKind.of(row.text("kind")).orElseThrow(
                    () -> new IllegalStateException(row.where() + " has an unknown kind of step"));
            steps.put(kind, new FirstStep(row.optionalText("lines").orElse("").lines().toList(), row.flag("risk")));
            row.allRead();
        }
        return steps;
    }
}
