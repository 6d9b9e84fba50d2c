package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.json.JsonText;
import org.benchleaf.page.Link;
import org.benchleaf.page.Table;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/**
 * Numbers that stand on a page as a table and beside it as a file, the same in both.
 *
 * @param id anchor of the table and name of the file
 * @param caption what the table tells
 * @param columns in order
 * @param rows each with as many cells as there are columns
 */
public record DataTable(String id, String caption, List<Column> columns, List<List<Cell>> rows) {

    public DataTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /**
     * A column.
     *
     * @param header on the page
     * @param name in the file
     * @param numbers whether it holds numbers
     * @param reasons whether the file tells in a column of its own why a number is missing, as the page does
     */
    public record Column(String header, String name, String unit, boolean numbers, boolean reasons) {

        public Column(String header, String name, String unit, boolean numbers) {
            this(header, name, unit, numbers, false);
        }

        /** A column of numbers that may not be known; where one is not, the file tells why in the column after it. */
        public static Column known(String header, String name) {
            return new Column(header, name, "", true, true);
        }

        /** A column of words. */
        public static Column words(String header, String name) {
            return new Column(header, name, "", false);
        }

        /** A column of numbers without a unit. */
        public static Column numbers(String header, String name) {
            return new Column(header, name, "", true);
        }

        /** A column of times: in words on the page, in minutes in the file. */
        public static Column times(String header, String name) {
            return new Column(header, name, "min", true);
        }

        /** The header with the unit, unless the cells tell it themselves. */
        private String headed() {
            return unit.isEmpty() || unit.equals("min") ? header : header + " (" + unit + ")";
        }
    }

    /**
     * One cell.
     *
     * @param shown on the page
     * @param plain in the file: a number with a decimal point and a plain minus sign, or words; empty if there is none
     */
    public record Cell(String shown, String plain) {

        /** Words, the same in both. */
        public static Cell words(String text) {
            return new Cell(text, text);
        }

        /** A rounded number as the page shows it. */
        public static Cell number(String shown) {
            return new Cell(shown, shown.replace('−', '-').replace(',', '.').replace("\u202F", ""));
        }

        /** No number, and why. */
        public static Cell missing(String why) {
            return new Cell(why, "");
        }

        private boolean isMissing() {
            return plain.isEmpty() && !shown.isEmpty();
        }

        private Cell why() {
            return isMissing() ? words(shown) : words("");
        }
    }

    /** The table for the page. */
    public Table table(Optional<Link> file) {
        return new Table(id, caption, columns.stream().map(column -> new Table.Column(column.headed(),
                column.numbers())).toList(), rows.stream().map(row -> row.stream().map(cell ->
                RichText.of(cell.shown())).toList()).toList(), file);
    }

    /** Name of the file beside the page. */
    public String file() {
        return id + ".csv";
    }

    /** The same rows as comma-separated values (RFC 4180). */
    public String csv() {
        return withReasons().lines();
    }

    /** With a column of words after each of numbers of which one is missing, where the file is to tell why. */
    private DataTable withReasons() {
        List<Integer> why = IntStream.range(0, columns.size()).filter(i -> columns.get(i).reasons()
                && rows.stream().anyMatch(row -> row.get(i).isMissing())).boxed().toList();
        return new DataTable(id, caption, IntStream.range(0, columns.size()).boxed().flatMap(i -> Stream.concat(
                Stream.of(columns.get(i)), why.stream().filter(i::equals).map(columns::get)
                        .map(column -> Column.words(column.header(), column.name() + "-missing")))).toList(),
                rows.stream().map(row -> IntStream.range(0, row.size()).boxed().flatMap(i -> Stream.concat(
                        Stream.of(row.get(i)), why.stream().filter(i::equals).map(any -> row.get(i).why()))).toList()).toList());
    }

    private String lines() {
        StringBuilder csv = new StringBuilder(line(columns.stream().map(Column::name).toList()));
        rows.forEach(row -> csv.append(line(IntStream.range(0, row.size()).mapToObj(i -> columns.get(i).numbers()
                ? row.get(i).plain() : guarded(row.get(i).plain())).toList())));
        return csv.toString();
    }

    /** What a row is, by the header of the first column, and in which units the numbers stand. */
    public String about(Words words) {
        Map<String, List<String>> units = new LinkedHashMap<>();
        columns.stream().skip(1).filter(Column::numbers).forEach(column ->
                units.computeIfAbsent(column.unit(), any -> new ArrayList<>()).add(column.header()));
        String row = rows.size() == 1 ? words.say("data.one-row") : words.say("data.row", "what", Words.small(columns.get(0).header()));
        return Stream.concat(Stream.of(row), units.entrySet().stream().map(each ->
                unit(words, each.getKey(), units.size() == 1 ? List.of() : each.getValue()))).collect(Collectors.joining(" "));
    }

    /** The unit of some columns; of all that hold numbers where none is named. */
    private static String unit(Words words, String unit, List<String> named) {
        return words.say((unit.isEmpty() ? "data.no-unit" : "data.unit") + (named.isEmpty() ? "" : "-of"), "unit", unit,
                "columns", String.join(", ", named));
    }

    /**
     * What the file holds, for programs (CSV on the Web).
     *
     * @param about what a row is, in words
     */
    public String metadata(String language, String about, Optional<String> licence, Optional<String> source) {
        return JsonText.script(JsonText.object(
                "@context", List.of("http://www.w3.org/ns/csvw", JsonText.object("@language", language)),
                "url", file(), "dc:title", caption, "dc:description", about,
                "dc:license", licence.map(one -> JsonText.object("@id", Licences.address(one))),
                "dc:source", source,
                "tableSchema", JsonText.object("columns", withReasons().columns.stream().map(DataTable::described).toList()))) + "\n";
    }

    private static Object described(Column column) {
        return JsonText.object("name", column.name().replaceAll("[^A-Za-z0-9]+", "_"), "titles", column.name(),
                "datatype", column.numbers() ? "number" : "string",
                "dc:description", column.unit().isEmpty() ? column.header() : column.header() + ", in " + column.unit());
    }

    /** A spreadsheet would take these first characters for the start of a formula; a number it may take for one. */
    private static String guarded(String text) {
        return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0 && !text.matches("[-+]?\\d+(\\.\\d+)?")
                ? "'" + text : text;
    }

    private static String line(List<String> cells) {
        return cells.stream().map(cell -> cell.matches("(?s).*[\",\r\n].*") ? "\"" + cell.replace("\"", "\"\"") + "\""
                : cell).collect(Collectors.joining(",")) + "\r\n";
    }
}
