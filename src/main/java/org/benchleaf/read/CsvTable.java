package org.benchleaf.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One of our own CSV files: a first line that tells what it is and where it comes from, a header, and rows.
 *
 * <p>Fields are separated by commas, may be quoted, and are stripped of the blanks around them.
 */
record CsvTable(String about, List<Map<String, String>> rows) {

    static CsvTable parse(String name, String text) {
        List<String> lines = text.lines().filter(line -> !line.isBlank()).toList();
        if (lines.size() < 3 || !lines.get(0).startsWith("#")) {
            throw new IllegalStateException(name + " needs a first line '# what, source', a header and rows");
        }
        List<String> header = fields(name, lines.get(1));
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line : lines.subList(2, lines.size())) {
            rows.add(row(name, header, fields(name, line)));
        }
        return new CsvTable(lines.get(0).substring(1).strip(), rows);
    }

    private static Map<String, String> row(String name, List<String> header, List<String> fields) {
        if (fields.size() != header.size()) {
            throw new IllegalStateException(name + " has " + header.size() + " columns, but a row has " + fields.size()
                    + ": " + fields);
        }
        Map<String, String> row = new LinkedHashMap<>();
        for (int k = 0; k < fields.size(); k++) {
            row.put(header.get(k), fields.get(k));
        }
        return row;
    }

    private static List<String> fields(String name, String line) {
        List<String> fields = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (int k = 0; k < line.length(); k++) {
            char c = line.charAt(k);
            if (c == '"') {
                boolean doubled = quoted && k + 1 < line.length() && line.charAt(k + 1) == '"';
                if (doubled) {
                    field.append(c);
                    k++;
                } else {
                    quoted = !quoted;
                }
            } else if (c == ',' && !quoted) {
                fields.add(field.toString().strip());
                field.setLength(0);
            } else {
                field.append(c);
            }
        }
        if (quoted) {
            throw new IllegalStateException(name + " has a quotation mark that is never closed: " + line);
        }
        fields.add(field.toString().strip());
        return fields;
    }
}
