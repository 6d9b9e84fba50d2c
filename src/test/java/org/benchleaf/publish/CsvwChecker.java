package org.benchleaf.publish;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Validates a table against its description as the W3C Recommendations of 17 December 2015 ask of a validator: "Metadata
 * Vocabulary for Tabular Data" (numbers of sections in the findings) and "Model for Tabular Data and Metadata on the Web".
 * Of annotations it knows those that tables here bear; any other is a finding, never passed over.
 */
final class CsvwChecker {

    private static final String NAMESPACE = "http://www.w3.org/ns/csvw";
    /** Section 5.3.2, 5.5.1 and 5.6.1: the properties of a table, a schema and a column that are used here. */
    private static final Set<String> OF_TABLE = Set.of("@context", "@id", "@type", "url", "dialect", "notes", "tableSchema",
            "tableDirection");
    private static final Set<String> OF_SCHEMA = Set.of("@id", "@type", "columns", "primaryKey", "rowTitles");
    private static final Set<String> OF_COLUMN = Set.of("@id", "@type", "name", "titles", "datatype", "required", "null", "lang");
    /** Section 5.8: common properties are prefixed names of the RDFa initial context, or whole addresses. */
    private static final Pattern COMMON = Pattern.compile("(?:dc|dcat|schema|skos|rdfs|prov|foaf):[A-Za-z]+|https?://.+");
    /** Section 5.11.1 and XML Schema 1.1 part 2: the built-in datatypes used here, and what their values look like. */
    private static final Map<String, Pattern> DATATYPES = Map.of(
            "string", Pattern.compile("(?s).*"),
            "number", Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([Ee][+-]?\\d+)?|NaN|-?INF"),
            "integer", Pattern.compile("[+-]?\\d+"),
            "date", Pattern.compile("-?\\d{4}-\\d\\d-\\d\\d"));
    /** RFC 6570, 2.3, as section 5.6 asks of names; they must not begin with an underscore. */
    private static final Pattern NAME = Pattern.compile("(?!_)(?:[A-Za-z0-9_]|%[0-9A-Fa-f]{2})(?:\\.?(?:[A-Za-z0-9_]|%[0-9A-Fa-f]{2}))*");

    private final List<String> findings = new ArrayList<>();
    private final String file;

    private CsvwChecker(String file) {
        this.file = file;
    }

    /**
     * What is wrong.
     *
     * @param file name of the table
     * @param csv the table, with a line for its header
     * @param metadata its description
     */
    static List<String> findings(String file, String csv, String metadata) {
        CsvwChecker checker = new CsvwChecker(file);
        try {
            checker.table(new ObjectMapper().readTree(metadata), csv);
        } catch (JsonProcessingException broken) {
            throw new UncheckedIOException(broken);
        }
        return checker.findings;
    }

    private void table(JsonNode table, String csv) {
        JsonNode context = table.path("@context");
        ask(context.isTextual() && context.asText().equals(NAMESPACE) || context.size() == 2 && context.get(0).asText().equals(NAMESPACE)
                && context.get(1).fieldNames().hasNext()
                && Set.of("@base", "@language").containsAll(names(context.get(1))), "5.2: @context is " + context);
        known(table, OF_TABLE);
        ask(table.path("url").isTextual() && file.equals(table.get("url").asText()), "5.3: url is " + table.path("url"));
        ask(table.path("tableSchema").isObject(), "5.3: there is no tableSchema");
        JsonNode schema = table.path("tableSchema");
        known(schema, OF_SCHEMA);
        columns(schema.path("columns"));
        List<List<String>> rows = DrawnNumbersTest.rows(csv);
        header(schema.path("columns"), rows.get(0));
        for (int row = 1; row < rows.size(); row++) {
            cells(schema.path("columns"), rows.get(row), row);
        }
        ask(csv.endsWith("\r\n") && csv.indexOf('\uFEFF') < 0, "RFC 4180: lines end with CR LF");
    }

    private void columns(JsonNode columns) {
        Set<String> seen = new HashSet<>();
        for (JsonNode column : columns) {
            known(column, OF_COLUMN);
            String name = column.path("name").asText();
            ask(NAME.matcher(name).matches(), "5.6: no name can be '" + name + "'");
            ask(seen.add(name), "5.5: two columns are named " + name);
            ask(column.path("titles").isTextual() && !column.get("titles").asText().isBlank(), "5.6: no title");
            ask(DATATYPES.containsKey(column.path("datatype").asText()), "5.11.1: " + column.path("datatype"));
        }
    }

    /** Section 5.5 with 6.5 of the model: the titles of the description are those of the table. */
    private void header(JsonNode columns, List<String> header) {
        List<String> titles = new ArrayList<>();
        columns.forEach(column -> titles.add(column.path("titles").asText()));
        ask(titles.equals(header), "the header is " + header + ", the titles are " + titles);
    }

    /** Section 6.4 of the model: an empty cell is null, any other has a value of the column's datatype. */
    private void cells(JsonNode columns, List<String> cells, int row) {
        ask(cells.size() == columns.size(), "row " + row + " has " + cells.size() + " cells");
        for (int at = 0; at < Math.min(cells.size(), columns.size()); at++) {
            String type = columns.get(at).path("datatype").asText();
            ask(cells.get(at).isEmpty() || DATATYPES.getOrDefault(type, DATATYPES.get("string")).matcher(cells.get(at)).matches(),
                    "row " + row + ": '" + cells.get(at) + "' is no " + type);
        }
    }

    private void known(JsonNode object, Set<String> known) {
        names(object).stream().filter(name -> !known.contains(name) && !COMMON.matcher(name).matches())
                .forEach(name -> findings.add(file + ": nothing is called " + name));
    }

    private static List<String> names(JsonNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private void ask(boolean holds, String finding) {
        if (!holds) {
            findings.add(file + ": " + finding);
        }
    }
}
