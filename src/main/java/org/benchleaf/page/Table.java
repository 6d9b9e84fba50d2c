package org.benchleaf.page;

import java.util.List;
import java.util.Optional;
import org.benchleaf.text.RichText;

/**
 * A captioned table with one row of headers.
 *
 * @param id anchor; the caption's id follows from it
 * @param caption what the table tells
 * @param columns headers, units included
 * @param rows each with as many cells as there are columns; the first cell heads its row
 * @param data a link to the same numbers as a file
 */
public record Table(String id, String caption, List<Column> columns, List<List<RichText>> rows, Optional<Link> data)
        implements Block {

    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        for (List<RichText> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException("table " + id + ": a row of " + row.size() + " cells under "
                        + columns.size() + " headers");
            }
        }
    }

    /** A column's header, and whether it holds numbers, which line up at their end. */
    public record Column(String header, boolean numbers) {
    }
}
