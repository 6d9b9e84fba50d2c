package org.benchleaf.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.model.CheckValue;
import org.benchleaf.model.CheckValues;
import org.benchleaf.model.Formulary;

/** Reads the outside values that every calculation is checked against, by the tests and on the page of methods. */
public final class CheckValueReader {

    private CheckValueReader() {
    }

    /**
     * Reads the check values of every method, in the order of the methods.
     *
     * @throws IllegalStateException if a file is missing or wrong
     */
    public static List<CheckValues> read(Formulary formulary) {
        return formulary.methods().stream().map(method -> read(method.name())).toList();
    }

    private static CheckValues read(String calculation) {
        String path = "/check-values/" + calculation + ".csv";
        CsvTable table = CsvTable.parse(path, OwnFile.text(path));
        return new CheckValues(calculation, table.about(),
                table.rows().stream().map(row -> value(path, calculation, row)).toList());
    }

    private static CheckValue value(String path, String calculation, Map<String, String> row) {
        return new CheckValue(calculation, cell(path, row, "id"), inputs(path, cell(path, row, "inputs")),
                cell(path, row, "output"), cell(path, row, "expected"),
                Double.parseDouble(cell(path, row, "tolerance")), cell(path, row, "source"), cell(path, row, "status"));
    }

    private static String cell(String path, Map<String, String> row, String column) {
        String cell = row.get(column);
        if (cell == null || cell.isEmpty()) {
            throw new IllegalStateException(path + " has a row without '" + column + "': " + row);
        }
        return cell;
    }

    private static Map<String, String> inputs(String path, String text) {
        Map<String, String> inputs = new LinkedHashMap<>();
        for (String pair : text.split(";")) {
            int equals = pair.indexOf('=');
            if (equals < 0) {
                throw new IllegalStateException(path + " has an input without '=': " + pair);
            }
            inputs.put(pair.substring(0, equals).strip(), pair.substring(equals + 1).strip());
        }
        return inputs;
    }
}
