package org.benchleaf.compose.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.benchleaf.compose.part.Evidence;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.page.Chart;
import org.benchleaf.quantity.Decimal;

/** Draws the numbers of one case on the scale of its series, and words them. */
public final class EvidenceStrip {

    /** The width of every drawing; narrow enough for the narrowest phone. */
    private static final int LANE = 20;
    private static final int FIRST = 14;
    private static final int AXIS_HEIGHT = 24;

    private final Sheet sheet;
    private final EvidenceSeries series;

    public EvidenceStrip(Sheet sheet, EvidenceSeries series) {
        this.sheet = sheet;
        this.series = series;
    }

    /** The scale by itself, above the rows that are drawn on it. */
    public Chart.Drawing axis(String name) {
        List<Chart.Mark> marks = new ArrayList<>();
        AxisScale scale = series.scale();
        for (double mark : scale.marks()) {
            marks.add(Chart.Mark.text(scale.at(mark), 16, "middle", sheet.numbers().fixed(mark, scale.decimals())));
            marks.add(Chart.Mark.line("grid", scale.at(mark), 19, scale.at(mark), AXIS_HEIGHT));
        }
        return new Chart.Drawing(series.anchor() + "-axis", sheet.words().say("evidence.axis", "measure", name),
                sheet.words().say("evidence.axis-about", "from", sheet.numbers().fixed(scale.from(), scale.decimals()),
                        "to", sheet.numbers().fixed(scale.to(), scale.decimals())), EvidenceSeries.WIDTH, AXIS_HEIGHT, marks, "");
    }

    /** One row of the drawing. */
    public Chart.Drawing row(EvidenceRow row, String id) {
        List<Evidence.Reach> reaches = row.evidence().reaches();
        boolean oneLane = row.evidence().kind().equals("colour");
        int height = FIRST + (oneLane ? 0 : LANE * (reaches.size() - 1)) + FIRST;
        List<Chart.Mark> marks = new ArrayList<>();
        series.scale().marks().forEach(mark -> marks.add(
                Chart.Mark.line("grid", series.scale().at(mark), 0, series.scale().at(mark), height)));
        for (int i = 0; i < reaches.size(); i++) {
            mark(marks, reaches.get(i), FIRST + (oneLane ? 0 : LANE * i));
        }
        return new Chart.Drawing(id, row.card().title(), reaches.stream().map(reach -> of(row.evidence(), reach) + ": "
                + told(reach)).collect(Collectors.joining("; ")), EvidenceSeries.WIDTH, height, marks, "");
    }

    private void mark(List<Chart.Mark> marks, Evidence.Reach reach, int y) {
        AxisScale scale = series.scale();
        if (!reach.low().isEmpty() && !reach.high().isEmpty()) {
            marks.add(Chart.Mark.reach("span", scale.at(Double.parseDouble(reach.low())),
                    scale.at(Double.parseDouble(reach.high())), y, number(reach.low()) + " " + number(reach.high())));
        }
        if (reach.middle().isEmpty()) {
            return;
        }
        double x = scale.at(Double.parseDouble(reach.middle()));
        boolean hollow = isHollow(reach);
        marks.add(Chart.Mark.at(hollow ? "dot" : "square", hollow ? "before" : "after", x, y, middle(reach)));
        if (reach.form().equals("less") || reach.form().equals("more")) {
            double end = reach.form().equals("less") ? x - LANE : x + LANE;
            marks.add(Chart.Mark.line("way", x, y, end, y));
            marks.add(Chart.Mark.head("way", x, y, end, y));
        }
    }

    /** Hollow marks of several spots may lie over each other and are still told apart. */
    private boolean isHollow(Evidence.Reach reach) {
        return series.first().kind().equals("colour") || reach.of().equals("before") || reach.of().equals("along");
    }

    /** A plain number as a page shows it. */
    public String number(String plain) {
        return sheet.numbers().plain(Decimal.read(plain));
    }

    /** The middle number with what is said beside it. */
    public String middle(Evidence.Reach reach) {
        String number = number(reach.middle());
        return reach.form().equals("one") ? number : sheet.words().say("stated." + reach.form(), "value", number);
    }

    /** What the numbers are of, in words; spots have their own. */
    public String of(Evidence evidence, Evidence.Reach reach) {
        return evidence.kind().equals("colour") ? reach.of() : sheet.words().say("evidence-of." + reach.of());
    }

    private String told(Evidence.Reach reach) {
        String ends = reach.low().isEmpty() ? "" : sheet.words().say("evidence.from-to", "low", number(reach.low()),
                "high", number(reach.high()));
        return reach.middle().isEmpty() ? ends : ends.isEmpty() ? middle(reach) : middle(reach) + " (" + ends + ")";
    }
}
