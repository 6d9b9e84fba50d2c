package org.benchleaf.model;

import java.util.List;
import java.util.Map;

/**
 * A table of published or customary values that a formula looks things up in.
 *
 * @param name the name of its file, without folder and ending
 * @param source what it is and where it comes from: the file's first line
 * @param rows its rows, each from column to text
 */
public record ReferenceTable(String name, String source, List<Map<String, String>> rows) {

    public ReferenceTable {
        rows = rows.stream().map(Map::copyOf).toList();
    }
}
