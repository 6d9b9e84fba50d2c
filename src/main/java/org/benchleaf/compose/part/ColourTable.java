package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.derive.figure.WorkedResult;
import org.benchleaf.model.Result;
import org.benchleaf.words.NumberText;
import org.benchleaf.words.Words;

/** The coordinates of a colour at each spot before and after and their differences, a table and a file. */
public final class ColourTable {

    private final Sheet sheet;
    private final String id;
    private final Result.Colour result;
    private final WorkedResult worked;

    public ColourTable(Sheet sheet, String id, Result.Colour result, WorkedResult worked) {
        this.sheet = sheet;
        this.id = id;
        this.result = result;
        this.worked = worked;
    }

    public DataTable data() {
        Words words = sheet.words();
        List<DataTable.Column> columns = new ArrayList<>(List.of(
                DataTable.Column.words(words.say("results.spot"), "spot")));
        for (String when : List.of("before", "after")) {
            for (String axis : List.of("L*", "a*", "b*")) {
                columns.add(DataTable.Column.numbers(axis + " " + words.say("results." + when + "-word"),
                        axis.replace("*", "") + " " + when));
            }
        }
        columns.add(DataTable.Column.numbers(words.say("results.lightness"), "change of L"));
        columns.add(DataTable.Column.numbers("ΔE, " + formula(), "colour difference " + formula()));
        return new DataTable(id, words.say("results.colour-caption", "conditions", conditions()), columns,
                result.spots().stream().map(this::row).toList());
    }

    private List<DataTable.Cell> row(Result.ColourSpot spot) {
        List<DataTable.Cell> row = new ArrayList<>(List.of(DataTable.Cell.words(spot.at())));
        for (List<Double> lab : List.of(spot.before(), spot.after())) {
            for (int i = 0; i < 3; i++) {
                row.add(lab.size() == 3 ? DataTable.Cell.number(number(lab.get(i))) : none());
            }
        }
        row.add(figure("lightness", spot).map(one -> DataTable.Cell.number(number(one.value().value()))).orElse(none()));
        row.add(difference(spot).map(DataTable.Cell::number).orElse(none()));
        return row;
    }

    /** A coordinate as the table shows it. */
    public String number(double coordinate) {
        return sheet.numbers().fixed(coordinate, decimals());
    }

    /** The colour difference of a spot, to a tenth. */
    public Optional<String> difference(Result.ColourSpot spot) {
        return Stream.of("de2000", "de94", "de76").flatMap(name -> figure(name, spot).stream()).findFirst()
                .map(figure -> sheet.numbers().fixed(figure.value().value(), 1));
    }

    /** The conditions without which the numbers mean nothing, as one text. */
    public String conditions() {
        Words words = sheet.words();
        String unknown = words.say("results.not-stated");
        return words.say("results.colour-conditions", "formula", formula(),
                "light", result.illuminant().orElse(unknown), "observer", result.observer().orElse(unknown));
    }

    private String formula() {
        return result.formula().orElse("CIEDE2000");
    }

    private Optional<Figure> figure(String name, Result.ColourSpot spot) {
        String end = spot.id().strip().replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
        return worked.figures().entrySet().stream().filter(entry -> entry.getKey().equals(name + "." + end))
                .map(Map.Entry::getValue).findFirst();
    }

    private DataTable.Cell none() {
        return DataTable.Cell.missing(sheet.words().say("results.not-read"));
    }

    private int decimals() {
        return result.spots().stream().flatMap(spot -> Stream.concat(spot.before().stream(), spot.after().stream()))
                .mapToInt(NumberText::decimalsOf).max().orElse(0);
    }
}
