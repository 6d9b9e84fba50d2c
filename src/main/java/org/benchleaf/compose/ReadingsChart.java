package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.model.Result;
import org.benchleaf.quantity.Unit;

/** Draws readings before and after, one line a place, and the two means with their smallest and largest reading. */
final class ReadingsChart {

    private static final int LABELS = 170;
    private static final int WIDTH = 640;
    private static final int ROW = 34;
    private static final int TOP = 20;

    private final Sheet sheet;
    private final String id;
    private final Result.Readings result;

    ReadingsChart(Sheet sheet, String id, Result.Readings result) {
        this.sheet = sheet;
        this.id = id;
        this.result = result;
    }

    /** The readings as a table and a file. */
    DataTable data() {
        Words words = sheet.words();
        String unit = result.unit() == Unit.PH || result.unit() == Unit.COUNT ? "" : result.unit().symbol();
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < rows(); i++) {
            rows.add(List.of(place(i), cell(result.before(), i), cell(result.after(), i)));
        }
        return new DataTable(id, words.say("results.readings-caption", "measure", words.term("measure", result.measure()),
                "method", result.method()), List.of(
                new DataTable.Column(words.say("results.place"), "place", "", false),
                new DataTable.Column(words.say("results.before"), "before", unit, true),
                new DataTable.Column(words.say("results.after"), "after", unit, true)), rows);
    }

    /** The drawing, if there is more than one reading to draw. */
    Optional<Chart> chart(Table table) {
        List<Double> all = Stream.concat(result.before().stream(), result.after().stream()).toList();
        if (all.size() < 2) {
            return Optional.empty();
        }
        Words words = sheet.words();
        Scale scale = Scale.holding(all, LABELS, WIDTH - 20);
        int means = result.before().size() > 1 || result.after().size() > 1 ? 1 : 0;
        int bottom = TOP + ROW * (rows() + means);
        List<Chart.Mark> marks = new ArrayList<>();
        for (double mark : scale.marks()) {
            marks.add(Chart.Mark.line("grid", scale.at(mark), TOP, scale.at(mark), bottom));
            marks.add(Chart.Mark.text(scale.at(mark), bottom + 20, "middle", sheet.numbers().rough(mark)));
        }
        for (int i = 0; i < rows(); i++) {
            double y = TOP + ROW * (i + 0.5);
            marks.add(Chart.Mark.text(0, y + 5, "start", place(i)));
            pair(marks, scale, y, reading(result.before(), i), reading(result.after(), i), i);
        }
        if (means == 1) {
            means(marks, scale, TOP + ROW * (rows() + 0.5));
        }
        marks.add(Chart.Mark.at("dot", "before", LABELS + 8, bottom + 42, ""));
        marks.add(Chart.Mark.text(LABELS + 20, bottom + 47, "start", words.say("results.before")));
        marks.add(Chart.Mark.at("square", "after", LABELS + 128, bottom + 42, ""));
        marks.add(Chart.Mark.text(LABELS + 140, bottom + 47, "start", words.say("results.after")));
        return Optional.of(new Chart(id + "-chart", words.say("results.chart-title",
                "measure", words.term("measure", result.measure())), words.say("results.chart-description"), WIDTH,
                bottom + 60, marks, words.say("results.chart-caption"), table));
    }

    private void pair(List<Chart.Mark> marks, Scale scale, double y, Optional<Double> before, Optional<Double> after,
            int i) {
        if (before.isPresent() && after.isPresent()) {
            marks.add(Chart.Mark.line("pair", scale.at(before.get()), y, scale.at(after.get()), y));
        }
        before.ifPresent(value -> marks.add(Chart.Mark.at("dot", "before", scale.at(value), y, cell(result.before(), i))));
        after.ifPresent(value -> marks.add(Chart.Mark.at("square", "after", scale.at(value), y, cell(result.after(), i))));
    }

    private void means(List<Chart.Mark> marks, Scale scale, double y) {
        marks.add(Chart.Mark.text(0, y + 5, "start", sheet.words().say("results.mean")));
        mean(marks, scale, y - 5, result.before(), "dot", "before");
        mean(marks, scale, y + 5, result.after(), "square", "after");
    }

    private static void mean(List<Chart.Mark> marks, Scale scale, double y, List<Double> readings, String shape,
            String tone) {
        if (!readings.isEmpty()) {
            double mean = readings.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
            double least = readings.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
            double most = readings.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
            marks.add(Chart.Mark.line("span", scale.at(least), y, scale.at(most), y));
            marks.add(Chart.Mark.at(shape, tone, scale.at(mean), y, ""));
        }
    }

    /** As many decimals as the finest reading was written with, so that the column lines up. */
    private int decimals() {
        return Stream.concat(result.before().stream(), result.after().stream()).mapToInt(NumberText::decimalsOf).max()
                .orElse(0);
    }

    private int rows() {
        return Math.max(result.before().size(), result.after().size());
    }

    private String place(int i) {
        return i < result.places().size() ? result.places().get(i)
                : sheet.words().say("results.reading-number", "n", i + 1);
    }

    private static Optional<Double> reading(List<Double> readings, int i) {
        return i < readings.size() ? Optional.of(readings.get(i)) : Optional.empty();
    }

    private String cell(List<Double> readings, int i) {
        return reading(readings, i).map(value -> sheet.numbers().fixed(value, decimals()))
                .orElse(sheet.words().say("results.not-read"));
    }
}
