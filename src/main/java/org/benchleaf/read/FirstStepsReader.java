package org.benchleaf.read;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.model.StepKind;

/** Reads the program's table of the lines that a new step of each kind usually needs. */
public final class FirstStepsReader {

    private static final String TABLE = "/reference/first-steps.yaml";

    private FirstStepsReader() {
    }

    /** The lines by the kind of step; no entry where a kind needs nothing of its own. */
    public static Map<StepKind, List<String>> read() {
        Map<StepKind, List<String>> lines = new EnumMap<>(StepKind.class);
        for (OwnYaml row : OwnYaml.list(TABLE)) {
            StepKind kind = StepKind.of(row.text("kind")).orElseThrow(
                    () -> new IllegalStateException(row.where() + " has an unknown kind of step"));
            lines.put(kind, row.text("lines").lines().toList());
            row.allRead();
        }
        return lines;
    }
}
