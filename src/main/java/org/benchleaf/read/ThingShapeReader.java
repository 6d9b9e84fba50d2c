package org.benchleaf.read;

import java.util.ArrayList;
import java.util.List;
import org.benchleaf.model.ThingShape;

/** Reads what the things of the bench look like. */
final class ThingShapeReader {

    private static final String FILE = "/reference/thing-shapes.yaml";

    private ThingShapeReader() {
    }

    /** The rows in their order; of those that fit a thing, the first counts. */
    static List<ThingShape> rows() {
        List<ThingShape> rows = new ArrayList<>();
        for (OwnYaml row : OwnYaml.list(FILE)) {
            row.text("source");
            rows.add(new ThingShape(row.text("name"), row.texts("named"), row.texts("kinds")));
            row.allRead();
        }
        return List.copyOf(rows);
    }
}
