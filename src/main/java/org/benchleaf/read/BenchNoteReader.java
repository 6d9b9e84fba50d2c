package org.benchleaf.read;

import java.util.ArrayList;
import java.util.List;
import org.benchleaf.model.BenchNote;

/** Reads how work around a class is done. */
final class BenchNoteReader {

    private static final String FILE = "/reference/bench-notes.yaml";

    private BenchNoteReader() {
    }

    /** The rows in their order. */
    static List<BenchNote> rows() {
        List<BenchNote> rows = new ArrayList<>();
        for (OwnYaml row : OwnYaml.list(FILE)) {
            row.text("source");
            rows.add(new BenchNote(row.texts("for"), row.text("about"), row.texts("at"), row.texts("things"),
                    row.text("words")));
            row.allRead();
        }
        return List.copyOf(rows);
    }
}
