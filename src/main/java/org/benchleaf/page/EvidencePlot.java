package org.benchleaf.page;

import java.util.List;
import java.util.Optional;

/**
 * Results of several cases on one scale, a row each, with the table of the same numbers; of a single case the numbers alone.
 *
 * @param key what the marks stand for; empty where nothing is drawn
 * @param axis the scale, above the rows; empty where there is nothing to compare on it
 * @param rows in order
 * @param table the same numbers
 */
public record EvidencePlot(String key, Optional<Chart.Drawing> axis, List<Row> rows, Table table) implements Block {

    public EvidencePlot {
        rows = List.copyOf(rows);
    }

    /**
     * One case.
     *
     * @param link to where the case tells it
     * @param language BCP 47 tag of the case's title
     * @param about technique, paper and the like
     * @param has the values that it can be filtered by, with spaces between
     * @param drawing its marks on the scale, where there is one
     */
    public record Row(Link link, String language, String about, String has, Optional<Chart.Drawing> drawing) {
    }
}
