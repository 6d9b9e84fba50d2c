package org.benchleaf.read;

import java.util.List;
import org.benchleaf.model.Practice;

/** Reads when a trainee usually counts as practised in a step. */
public final class PracticeReader {

    private static final String FILE = "/reference/practised.yaml";

    private PracticeReader() {
    }

    /**
     * The usual rule.
     *
     * @throws IllegalStateException if our own table does not hold exactly one
     */
    public static Practice usual() {
        List<OwnYaml> rows = OwnYaml.list(FILE);
        if (rows.size() != 1) {
            throw new IllegalStateException(FILE + " holds " + rows.size() + " rules");
        }
        OwnYaml row = rows.get(0);
        row.text("name");
        row.text("source");
        return new Practice(Integer.parseInt(row.text("times")), Integer.parseInt(row.text("help next time")));
    }
}
