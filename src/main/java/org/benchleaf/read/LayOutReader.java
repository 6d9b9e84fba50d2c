package org.benchleaf.read;

import java.util.LinkedHashMap;
import java.util.Map;
import org.benchleaf.model.LayOutRow;

/** Reads how many of each thing are laid out. */
final class LayOutReader {

    private static final String FILE = "/reference/lay-out.yaml";

    private LayOutReader() {
    }

    /** The rows by what a thing is in a step. */
    static Map<String, LayOutRow> rows() {
        Map<String, LayOutRow> rows = new LinkedHashMap<>();
        for (OwnYaml row : OwnYaml.list(FILE)) {
            row.text("source");
            rows.put(row.text("name"), new LayOutRow(row.text("name"), Integer.parseInt(row.text("each")), row.text("per"),
                    row.flag("used up"), row.optionalText("words").orElse("")));
            row.allRead();
        }
        return rows;
    }
}
