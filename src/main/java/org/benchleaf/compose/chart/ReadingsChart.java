package org.benchleaf.compose.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.compose.part.ReadingsTables;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.model.Result;
import org.benchleaf.page.Chart;
import org.benchleaf.page.Table;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.words.Words;

/** Draws readings before and after, one line a place, then the means with the 95 % interval of the change. */
public final class ReadingsChart {

    private static final int START = 14;
    private static final int ROW = 46;
    private static final int TOP = 30;
    private static final int FEWEST_STEPS = 4;

    private final Sheet sheet;
    private final String id;
    private final Result.Readings result;
    private final ReadingsTables tables;
    private final List<Chart.Mark> marks = new ArrayList<>();

    public ReadingsChart(Sheet sheet, String id, Result.Readings result, ReadingsTables tables) {
        this.sheet = sheet;
        this.id = id;
        this.result = result;
        this.tables = tables;
    }

    /** The drawing, if there is more than one reading to draw. */
    public Optional<Chart> chart(List<Table> beside) {
        List<Double> all = Stream.concat(result.before().stream(), result.after().stream()).toList();
        if (all.size() < 2) {
            return Optional.empty();
        }
        Words words = sheet.words();
        AxisScale scale = AxisScale.holding(widened(all), START, Chart.WIDTH - START);
        boolean means = tables.count() > 1;
        int bottom = TOP + ROW * (tables.count() + (means ? 1 : 0)) + 8;
        legend();
        String measure = words.measure(result.measure());
        axis(scale, TOP, bottom, tables.unit().isEmpty() ? measure : measure + " (" + tables.unit() + ")");
        for (int i = 0; i < tables.count(); i++) {
            place(scale, TOP + ROW * i, i);
        }
        if (means) {
            means(scale, TOP + ROW * tables.count());
        }
        int height = tables.interval().map(change -> change(change, bottom + 52)).orElse(bottom + 46);
        return Optional.of(new Chart(List.of(Chart.Drawing.of(id + "-chart",
                words.say("results.chart-title", "measure", measure), words.say("results.chart-description"),
                height, marks, words.say(tables.interval().isPresent() ? "results.chart-interval"
                        : "results.chart-caption"))), id + "-numbers", beside, false));
    }

    /** A scale drawn finer than the readings would promise digits that nobody read. */
    private List<Double> widened(List<Double> all) {
        double least = all.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double most = all.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        double room = Math.max(0, FEWEST_STEPS * tables.finest() - (most - least)) / 2;
        return List.of(least - room, most + room);
    }

    private void legend() {
        Words words = sheet.words();
        if (!result.before().isEmpty()) {
            marks.add(Chart.Mark.at("dot", "before", START, 10, ""));
            marks.add(Chart.Mark.text(START + 14, 16, "start", words.say("results.before")));
        }
        if (!result.after().isEmpty()) {
            marks.add(Chart.Mark.at("square", "after", START + 110, 10, ""));
            marks.add(Chart.Mark.text(START + 124, 16, "start", words.say("results.after")));
        }
    }

    private void axis(AxisScale scale, int top, int bottom, String name) {
        for (double mark : scale.marks()) {
            marks.add(Chart.Mark.line("grid", scale.at(mark), top, scale.at(mark), bottom));
            marks.add(Chart.Mark.text(scale.at(mark), bottom + 18, "middle", sheet.numbers().fixed(mark, scale.decimals())));
        }
        marks.add(Chart.Mark.text(Chart.WIDTH - START, bottom + 40, "end", name));
    }

    private void place(AxisScale scale, double top, int i) {
        double y = top + 34;
        boolean before = i < result.before().size();
        boolean after = i < result.after().size();
        marks.add(Chart.Mark.text(0, top + 18, "start", tables.place(i)));
        if (before && after && tables.paired()) {
            marks.add(Chart.Mark.line("pair", scale.at(result.before().get(i)), y, scale.at(result.after().get(i)), y));
        }
        if (before) {
            marks.add(Chart.Mark.at("dot", "before", scale.at(result.before().get(i)), y,
                    tables.cell(result.before(), i).shown()));
        }
        if (after) {
            marks.add(Chart.Mark.at("square", "after", scale.at(result.after().get(i)), y,
                    tables.cell(result.after(), i).shown()));
        }
    }

    private void means(AxisScale scale, double top) {
        double y = top + 34;
        marks.add(Chart.Mark.line("rule", 0, top + 1, Chart.WIDTH, top + 1));
        marks.add(Chart.Mark.text(0, top + 18, "start", sheet.words().say("results.mean")));
        Optional<Double> before = tables.mean("before").filter(any -> result.before().size() > 1);
        Optional<Double> after = tables.mean("after").filter(any -> result.after().size() > 1);
        before.ifPresent(mean -> after.ifPresent(other ->
                marks.add(Chart.Mark.line("pair", scale.at(mean), y, scale.at(other), y))));
        before.ifPresent(mean -> marks.add(Chart.Mark.at("dot", "before", scale.at(mean), y, tables.toldMean("before"))));
        after.ifPresent(mean -> marks.add(Chart.Mark.at("square", "after", scale.at(mean), y, tables.toldMean("after"))));
    }

    /**
     * The change of the mean with its interval, on a scale of its own that has the zero: laid off from the mean before
     * it would reach where no reading can lie, such as below no spots at all.
     */
    private int change(Quantity change, int top) {
        AxisScale scale = AxisScale.holding(List.of(0.0, change.low(), change.high()), START, Chart.WIDTH - START);
        double y = top + 36;
        int bottom = top + 52;
        marks.add(Chart.Mark.text(0, top + 18, "start", sheet.words().say("results.change-axis")));
        axis(scale, top + 24, bottom, tables.unit());
        marks.add(Chart.Mark.line("zero", scale.at(0), top + 24, scale.at(0), bottom));
        marks.add(Chart.Mark.reach("span", scale.at(change.low()), scale.at(change.high()), y,
                tables.toldChange(change.low()) + " " + tables.toldChange(change.high())));
        marks.add(Chart.Mark.diamond("change", scale.at(change.value()), y, tables.toldChange(change.value())));
        return bottom + (tables.unit().isEmpty() ? 26 : 46);
    }
}
