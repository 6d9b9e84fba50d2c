package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.derive.Figure;
import org.benchleaf.derive.WorkedResult;
import org.benchleaf.model.Result;

/** Draws colours before and after: swatches, and each spot's way in the plane of yellowness (b*) and lightness (L*). */
final class ColourChart {

    private static final int WIDTH = 640;
    private static final int ROW = 46;
    private static final int LABELS = 190;
    private static final int PLOT = 300;

    private final Sheet sheet;
    private final String id;
    private final Result.Colour result;
    private final WorkedResult worked;

    ColourChart(Sheet sheet, String id, Result.Colour result, WorkedResult worked) {
        this.sheet = sheet;
        this.id = id;
        this.result = result;
        this.worked = worked;
    }

    /** The coordinates and differences as a table and a file. */
    DataTable data() {
        Words words = sheet.words();
        List<DataTable.Column> columns = new ArrayList<>(List.of(
                new DataTable.Column(words.say("results.spot"), "spot", "", false)));
        for (String when : List.of("before", "after")) {
            for (String axis : List.of("L*", "a*", "b*")) {
                columns.add(new DataTable.Column(axis + " " + words.say("results." + when + "-word"),
                        axis.replace("*", "") + " " + when, "", true));
            }
        }
        columns.add(new DataTable.Column("ΔE, " + result.formula().orElse("CIEDE2000"),
                "colour difference " + result.formula().orElse("CIEDE2000"), "", true));
        List<List<String>> rows = new ArrayList<>();
        for (Result.ColourSpot spot : result.spots()) {
            List<String> row = new ArrayList<>(List.of(spot.at()));
            row.addAll(cells(spot.before()));
            row.addAll(cells(spot.after()));
            row.add(difference(spot).map(figure -> sheet.numbers().fixed(figure.value().value(), 1))
                    .orElse(words.say("results.not-read")));
            rows.add(row);
        }
        return new DataTable(id, words.say("results.colour-caption"), columns, rows);
    }

    private List<String> cells(List<Double> lab) {
        return lab.size() == 3 ? lab.stream().map(value -> sheet.numbers().fixed(value, decimals())).toList()
                : List.of(none(), none(), none());
    }

    private int decimals() {
        return result.spots().stream().flatMap(spot -> java.util.stream.Stream.concat(spot.before().stream(),
                spot.after().stream())).mapToInt(NumberText::decimalsOf).max().orElse(0);
    }

    private String none() {
        return sheet.words().say("results.not-read");
    }

    private Optional<Figure> difference(Result.ColourSpot spot) {
        String end = "." + spot.at().strip().replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
        return worked.figures().entrySet().stream().filter(entry -> entry.getKey().startsWith("de")
                && entry.getKey().endsWith(end)).map(Map.Entry::getValue).findFirst();
    }

    /** The drawing; empty if no spot has a colour. */
    Optional<Chart> chart(Table table) {
        List<Result.ColourSpot> spots = result.spots().stream()
                .filter(spot -> spot.before().size() == 3 || spot.after().size() == 3).toList();
        if (spots.isEmpty()) {
            return Optional.empty();
        }
        Words words = sheet.words();
        List<Chart.Mark> marks = new ArrayList<>();
        marks.add(Chart.Mark.text(LABELS, 16, "start", words.say("results.before")));
        marks.add(Chart.Mark.text(LABELS + 160, 16, "start", words.say("results.after")));
        for (int i = 0; i < spots.size(); i++) {
            double y = 26 + ROW * i;
            marks.add(Chart.Mark.text(0, y + 24, "start", (i + 1) + ". " + spots.get(i).at()));
            swatch(marks, LABELS, y, spots.get(i).before());
            swatch(marks, LABELS + 160, y, spots.get(i).after());
        }
        double top = 26 + ROW * spots.size() + 40;
        plane(marks, spots, top);
        return Optional.of(new Chart(id + "-chart", words.say("results.colour-title"),
                words.say("results.colour-description"), WIDTH, (int) top + PLOT + 60, marks,
                words.say("results.colour-note"), table));
    }

    private static void swatch(List<Chart.Mark> marks, double x, double y, List<Double> lab) {
        if (lab.size() == 3) {
            marks.add(Chart.Mark.swatch(x, y, 140, ROW - 10, ScreenColour.of(lab.get(0), lab.get(1), lab.get(2)), ""));
        }
    }

    private void plane(List<Chart.Mark> marks, List<Result.ColourSpot> spots, double top) {
        List<Double> lightness = new ArrayList<>();
        List<Double> yellowness = new ArrayList<>();
        for (Result.ColourSpot spot : spots) {
            for (List<Double> lab : List.of(spot.before(), spot.after())) {
                if (lab.size() == 3) {
                    lightness.add(lab.get(0));
                    yellowness.add(lab.get(2));
                }
            }
        }
        Scale across = Scale.holding(yellowness, 70, WIDTH - 40);
        Scale up = Scale.holding(lightness, top + PLOT, top);
        for (double mark : across.marks()) {
            marks.add(Chart.Mark.line("grid", across.at(mark), top, across.at(mark), top + PLOT));
            marks.add(Chart.Mark.text(across.at(mark), top + PLOT + 20, "middle", sheet.numbers().rough(mark)));
        }
        for (double mark : up.marks()) {
            marks.add(Chart.Mark.line("grid", 70, up.at(mark), WIDTH - 40, up.at(mark)));
            marks.add(Chart.Mark.text(60, up.at(mark) + 5, "end", sheet.numbers().rough(mark)));
        }
        marks.add(Chart.Mark.text(WIDTH - 40, top + PLOT + 44, "end", sheet.words().say("results.axis-b")));
        marks.add(Chart.Mark.text(0, top - 12, "start", sheet.words().say("results.axis-l")));
        for (int i = 0; i < spots.size(); i++) {
            way(marks, spots.get(i), across, up, i + 1);
        }
    }

    private void way(List<Chart.Mark> marks, Result.ColourSpot spot, Scale across, Scale up, int number) {
        boolean before = spot.before().size() == 3;
        boolean after = spot.after().size() == 3;
        if (before && after) {
            marks.add(Chart.Mark.line("pair", across.at(spot.before().get(2)), up.at(spot.before().get(0)),
                    across.at(spot.after().get(2)), up.at(spot.after().get(0))));
        }
        if (before) {
            point(marks, "dot", "before", across, up, spot.before(), number);
        }
        if (after) {
            point(marks, "square", "after", across, up, spot.after(), before ? 0 : number);
        }
    }

    private void point(List<Chart.Mark> marks, String shape, String tone, Scale across, Scale up, List<Double> lab,
            int number) {
        double x = across.at(lab.get(2));
        double y = up.at(lab.get(0));
        marks.add(Chart.Mark.at(shape, tone, x, y, sheet.numbers().fixed(lab.get(0), decimals()) + " "
                + sheet.numbers().fixed(lab.get(2), decimals())));
        if (number > 0) {
            marks.add(Chart.Mark.text(x + 10, y - 8, "start", String.valueOf(number)));
        }
    }
}
