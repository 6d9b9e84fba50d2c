package org.benchleaf.read;

import java.util.ArrayList;
import java.util.List;
import org.benchleaf.model.BenchNeed;

/** Reads what work needs that a case does not name. */
final class BenchNeedReader {

    private static final String FILE = "/reference/bench-needs.yaml";

    private BenchNeedReader() {
    }

    /** The rows in their order. */
    static List<BenchNeed> rows() {
        List<BenchNeed> rows = new ArrayList<>();
        for (OwnYaml row : OwnYaml.list(FILE)) {
            row.text("source");
            rows.add(new BenchNeed(row.text("name"), row.texts("for"), Integer.parseInt(row.text("each")),
                    BenchNeed.Per.of(row.text("per")), row.optionalText("words").orElse(""),
                    row.optionalText("bought").isPresent()));
            row.allRead();
        }
        return List.copyOf(rows);
    }
}
