package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;

/**
 * Numbers that stand on a page as a table and beside it as a file, the same in both.
 *
 * @param id anchor of the table and name of the file
 * @param caption what the table tells
 * @param columns in order
 * @param rows cells as text, a missing one with the reason in words
 */
record DataTable(String id, String caption, List<Column> columns, List<List<String>> rows) {

    /** A column: its header on the page, its name in the file, its unit and whether it holds numbers. */
    record Column(String header, String name, String unit, boolean numbers) {
    }

    /** The table for the page. */
    Table table(Optional<Link> file) {
        return new Table(id, caption, columns.stream().map(column -> new Table.Column(column.unit().isEmpty()
                ? column.header() : column.header() + " (" + column.unit() + ")", column.numbers())).toList(),
                rows.stream().map(row -> row.stream().map(Html::ofText).toList()).toList(), file);
    }

    /** The same rows as comma-separated values (RFC 4180), decimal points, a plain minus sign. */
    String csv() {
        StringBuilder csv = new StringBuilder(line(columns.stream().map(Column::name).toList()));
        rows.forEach(row -> {
            List<String> cells = new java.util.ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                cells.add(columns.get(i).numbers() ? number(row.get(i)) : guarded(row.get(i)));
            }
            csv.append(line(cells));
        });
        return csv.toString();
    }

    /** What the file holds, for programs (CSV on the Web). */
    String metadata(String language, String licence) {
        return Json.text(Json.object("@context", List.of("http://www.w3.org/ns/csvw", Json.object("@language", language)),
                "url", id + ".csv", "dc:title", caption, "dc:license", licence,
                "tableSchema", Json.object("columns", columns.stream().map(column -> Json.object(
                        "name", column.name().replaceAll("[^A-Za-z0-9]+", "_"), "titles", column.name(),
                        "datatype", column.numbers() ? "number" : "string",
                        "null", column.numbers() ? List.of("") : List.of(),
                        "dc:description", column.unit().isEmpty() ? column.header()
                                : column.header() + ", in " + column.unit())).toList()))) + "\n";
    }

    private static String number(String shown) {
        String plain = shown.replace('−', '-').replace(',', '.').replace(" ", "").replace("\u202F", "");
        return plain.matches("-?\\d+(\\.\\d+)?([eE]-?\\d+)?") ? plain : "";
    }

    /** A spreadsheet would take these first characters for the start of a formula. */
    private static String guarded(String text) {
        return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    private static String line(List<String> cells) {
        return cells.stream().map(cell -> cell.matches("(?s).*[\",\r\n].*") ? "\"" + cell.replace("\"", "\"\"") + "\""
                : cell).collect(java.util.stream.Collectors.joining(",")) + "\r\n";
    }
}
