package org.benchleaf.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.FormMessages;
import org.benchleaf.message.Nearest;
import org.benchleaf.model.Result;
import org.benchleaf.read.Node;
import org.benchleaf.read.ReadingsTable;

/**
 * Takes the readings of a result from the columns of a table that an instrument wrote.
 *
 * <p>{@code columns:} names them as the table's header does: {@code place}, {@code before} and {@code after} for
 * readings; {@code place}, {@code moment}, {@code L}, {@code a} and {@code b} for colours, where {@code moment} holds
 * the word before or after in each line.
 */
final class TableColumns {

    private static final String WITH_POINT = "[+-]?\\d+(\\.\\d+)?";
    private static final String WITH_COMMA = "[+-]?\\d+(,\\d+)?";

    private final ReadingsTable table;
    private final Fields columns;
    private final boolean commas;

    /** Readings by column; a place is empty where no column names them. */
    record Readings(List<String> places, List<Double> before, List<Double> after) {
        static final Readings NONE = new Readings(List.of(), List.of(), List.of());
    }

    private TableColumns(ReadingsTable table, Fields columns) {
        this.table = table;
        this.columns = columns;
        this.commas = columns.text("decimal mark").filter("comma"::equals).isPresent();
    }

    static Readings readings(Fields result, Context context) {
        return of(result, context).map(TableColumns::readings).orElse(Readings.NONE);
    }

    static List<Result.ColourSpot> spots(Fields result, Context context) {
        return of(result, context).map(TableColumns::spots).orElse(List.of());
    }

    private static Optional<TableColumns> of(Fields result, Context context) {
        Optional<Node.Scalar> file = result.scalar("file");
        Optional<Fields> columns = result.group("columns");
        if (file.isEmpty()) {
            return Optional.empty();
        }
        Optional<ReadingsTable> table = Optional.ofNullable(context.tables().get(file.get().text().strip()));
        if (table.isEmpty()) {
            result.messages().add(FormMessages.TABLE_MISSING.at(file.get().place(), "file", file.get().text()));
        }
        if (columns.isEmpty()) {
            result.soundness().spoil(file.get().place());
        }
        return table.isEmpty() || columns.isEmpty() ? Optional.empty()
                : Optional.of(new TableColumns(table.get(), columns.get()));
    }

    private Readings readings() {
        return new Readings(column("place").map(this::texts).orElse(List.of()),
                column("before").map(index -> numbers(index, "before")).orElse(List.of()),
                column("after").map(index -> numbers(index, "after")).orElse(List.of()));
    }

    private List<Result.ColourSpot> spots() {
        Optional<Integer> place = column("place");
        Optional<Integer> moment = column("moment");
        List<Optional<Integer>> coordinates = List.of(column("L"), column("a"), column("b"));
        if (place.isEmpty() || moment.isEmpty() || coordinates.stream().anyMatch(Optional::isEmpty)) {
            columns.soundness().spoil(columns.place());
            return List.of();
        }
        Map<String, Map<String, List<Double>>> spots = new LinkedHashMap<>();
        for (List<ReadingsTable.Cell> row : table.rows()) {
            List<Double> colour = new ArrayList<>();
            coordinates.forEach(index -> number(row.get(index.get()), table.header().get(index.get()).text())
                    .ifPresent(colour::add));
            if (colour.size() == 3 && !areCoordinates(colour)) {
                columns.messages().add(FormMessages.COLOUR_COORDINATES.at(row.get(coordinates.get(0).get()).place()));
            }
            spots.computeIfAbsent(row.get(place.get()).text(), key -> new LinkedHashMap<>())
                    .put(row.get(moment.get()).text(), colour);
        }
        return spots.entrySet().stream().map(spot -> new Result.ColourSpot(spot.getKey(),
                spot.getValue().getOrDefault("before", List.of()),
                spot.getValue().getOrDefault("after", List.of()))).toList();
    }

    /** Whether they can be L*, a* and b* of a surface. */
    static boolean areCoordinates(List<Double> numbers) {
        return numbers.size() == 3 && numbers.get(0) >= 0 && numbers.get(0) <= 100
                && Math.abs(numbers.get(1)) <= 200 && Math.abs(numbers.get(2)) <= 200;
    }

    /** Where the column stands that a key of {@code columns:} names. */
    private Optional<Integer> column(String key) {
        Optional<Node.Scalar> name = columns.scalar(key);
        if (name.isEmpty()) {
            return Optional.empty();
        }
        List<String> header = table.header().stream().map(ReadingsTable.Cell::text).toList();
        int index = header.indexOf(name.get().text().strip());
        if (index < 0) {
            columns.messages().add(FormMessages.TABLE_COLUMN.at(name.get().place(), "file", table.file(),
                    "column", name.get().text(), "remedy", Nearest.to(name.get().text(), header)
                            .map(near -> "Did you mean '" + near + "'?")
                            .orElse("Its columns are: " + String.join(", ", header) + ".")));
            return Optional.empty();
        }
        int last = header.lastIndexOf(name.get().text().strip());
        if (last > index) {
            columns.messages().add(FormMessages.COLUMN_TWICE.at(table.header().get(last).place(),
                    "file", table.file(), "column", header.get(last)));
        }
        return Optional.of(index);
    }

    private List<String> texts(int index) {
        return table.rows().stream().map(row -> row.get(index).text()).toList();
    }

    private List<Double> numbers(int index, String key) {
        List<Double> numbers = new ArrayList<>();
        for (List<ReadingsTable.Cell> row : table.rows()) {
            number(row.get(index), table.header().get(index).text()).ifPresent(numbers::add);
        }
        return numbers;
    }

    private Optional<Double> number(ReadingsTable.Cell cell, String column) {
        if (cell.text().matches(commas ? WITH_COMMA : WITH_POINT)) {
            return Optional.of(Double.valueOf(cell.text().replace(',', '.')));
        }
        columns.messages().add(FormMessages.TABLE_NUMBER.at(cell.place(), "found", cell.text(), "column", column,
                "remedy", !commas && cell.text().matches(WITH_COMMA)
                        ? "If the instrument writes a decimal comma, add 'decimal mark: comma' under 'columns:'."
                        : commas && cell.text().matches(WITH_POINT)
                        ? "The case says 'decimal mark: comma'; take that out if the instrument writes a point."
                        : "Correct the cell, or delete the line."));
        return Optional.empty();
    }
}
