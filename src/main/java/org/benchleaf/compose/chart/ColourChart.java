package org.benchleaf.compose.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.compose.part.ColourTable;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.model.Result;
import org.benchleaf.page.Chart;
import org.benchleaf.page.Table;
import org.benchleaf.words.Words;

/** Draws colours before and after: patches side by side, and each spot's way in the plane of b* and L*. */
public final class ColourChart {

    private static final int ROW = 96;
    private static final int TOP = 26;
    private static final int PLOT = 300;
    private static final int LEFT = 44;
    private static final int HALF = Chart.WIDTH / 2;

    private final Sheet sheet;
    private final String id;
    private final List<Result.ColourSpot> spots;
    private final ColourTable table;
    private final List<Chart.Mark> marks = new ArrayList<>();

    public ColourChart(Sheet sheet, String id, Result.Colour result, ColourTable table) {
        this.sheet = sheet;
        this.id = id;
        this.spots = result.spots().stream().filter(spot -> known(spot.before()) || known(spot.after())).toList();
        this.table = table;
    }

    /** The two drawings, patches first; empty if no spot has a colour. */
    public Optional<Chart> chart(List<Table> below) {
        return spots.isEmpty() ? Optional.empty()
                : Optional.of(new Chart(List.of(patches(), plane()), id + "-numbers", below, true));
    }

    private Chart.Drawing patches() {
        Words words = sheet.words();
        List<Chart.Mark> drawn = new ArrayList<>();
        drawn.add(Chart.Mark.text(0, 16, "start", words.say("results.before-lab")));
        drawn.add(Chart.Mark.text(HALF, 16, "start", words.say("results.after-lab")));
        for (int i = 0; i < spots.size(); i++) {
            Result.ColourSpot spot = spots.get(i);
            double y = TOP + ROW * i;
            drawn.add(Chart.Mark.text(0, y + 20, "start", numbered(i)));
            table.difference(spot).ifPresent(number ->
                    drawn.add(Chart.Mark.text(Chart.WIDTH, y + 20, "end", "ΔE\u202F" + number)));
            patch(drawn, 0, y + 28, spot.before());
            patch(drawn, HALF, y + 28, spot.after());
        }
        return Chart.Drawing.of(id + "-patches", words.say("results.colour-title"),
                words.say("results.colour-description"), TOP + ROW * spots.size(), drawn, words.say("results.colour-note"));
    }

    private void patch(List<Chart.Mark> drawn, double x, double y, List<Double> lab) {
        if (known(lab)) {
            drawn.add(Chart.Mark.swatch(x, y, HALF, 36, ScreenColour.of(lab.get(0), lab.get(1), lab.get(2)),
                    coordinates(lab, " ")));
            drawn.add(Chart.Mark.text(x, y + 54, "start", coordinates(lab, ", ")));
        } else {
            drawn.add(Chart.Mark.text(x, y + 24, "start", sheet.words().say("results.not-read")));
        }
    }

    private String coordinates(List<Double> lab, String between) {
        return String.join(between, lab.stream().map(table::number).toList());
    }

    private Chart.Drawing plane() {
        Words words = sheet.words();
        AxisScale across = AxisScale.holding(values(2), LEFT + 8, Chart.WIDTH - 14);
        AxisScale up = AxisScale.holding(values(0), TOP + PLOT, TOP + 8);
        for (double mark : across.marks()) {
            marks.add(Chart.Mark.line("grid", across.at(mark), TOP, across.at(mark), TOP + PLOT));
            marks.add(Chart.Mark.text(across.at(mark), TOP + PLOT + 20, "middle",
                    sheet.numbers().fixed(mark, across.decimals())));
        }
        for (double mark : up.marks()) {
            marks.add(Chart.Mark.line("grid", LEFT, up.at(mark), Chart.WIDTH, up.at(mark)));
            marks.add(Chart.Mark.text(LEFT - 8, up.at(mark) + 5, "end", sheet.numbers().fixed(mark, up.decimals())));
        }
        marks.add(Chart.Mark.text(0, 16, "start", words.say("results.axis-l")));
        marks.add(Chart.Mark.text(Chart.WIDTH, TOP + PLOT + 42, "end", words.say("results.axis-b")));
        for (int i = 0; i < spots.size(); i++) {
            way(spots.get(i), across, up, i);
        }
        double legend = legend(TOP + PLOT + 68);
        return Chart.Drawing.of(id + "-plane", words.say("results.plane-title"), words.say("results.plane-description"),
                legend, marks, words.say("results.plane-note"));
    }

    /** Which number is which spot, one line each, so that no name stands in the way of an arrow. */
    private double legend(double top) {
        for (int i = 0; i < spots.size(); i++) {
            marks.add(Chart.Mark.text(0, top + 22 * i, "start", numbered(i)));
        }
        return top + 22 * spots.size() - 12;
    }

    private String numbered(int i) {
        return (i + 1) + ". " + spots.get(i).at();
    }

    private List<Double> values(int axis) {
        return spots.stream().flatMap(spot -> Stream.of(spot.before(), spot.after())).filter(ColourChart::known)
                .map(lab -> lab.get(axis)).toList();
    }

    private void way(Result.ColourSpot spot, AxisScale across, AxisScale up, int i) {
        Optional<double[]> before = point(spot.before(), across, up);
        Optional<double[]> after = point(spot.after(), across, up);
        if (before.isPresent() && after.isPresent()) {
            double[] from = before.get();
            double[] to = after.get();
            marks.add(Chart.Mark.line("way", from[0], from[1], to[0], to[1]));
            if (StrictMath.hypot(to[0] - from[0], to[1] - from[1]) > 28) {
                marks.add(Chart.Mark.head("way", from[0], from[1], to[0], to[1]));
            }
        }
        before.ifPresent(at -> mark("dot", "before", at, spot.before()));
        after.ifPresent(at -> mark("square", "after", at, spot.after()));
        boolean rightward = before.isPresent() && after.isPresent() && after.get()[0] > before.get()[0];
        before.or(() -> after).ifPresent(at -> marks.add(Chart.Mark.text(at[0] + (rightward ? -10 : 10), at[1] - 8,
                rightward ? "end" : "start", String.valueOf(i + 1))));
    }

    private static Optional<double[]> point(List<Double> lab, AxisScale across, AxisScale up) {
        return known(lab) ? Optional.of(new double[] {across.at(lab.get(2)), up.at(lab.get(0))}) : Optional.empty();
    }

    private void mark(String shape, String tone, double[] at, List<Double> lab) {
        marks.add(Chart.Mark.at(shape, tone, at[0], at[1], table.number(lab.get(0)) + " " + table.number(lab.get(2))));
    }

    private static boolean known(List<Double> lab) {
        return lab.size() == 3;
    }
}
