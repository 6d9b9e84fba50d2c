package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.List;
import org.benchleaf.derive.Timeline;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Unit;

/**
 * Lays the bench strip on its side: one line a step, hands-on time full, waiting time hollow, changes of blotters as
 * ticks, hold points as double bars. The time narrows to the right, since minutes and days must stand on one strip.
 */
final class TimelineChart {

    private static final int WIDTH = 760;
    private static final int LABELS = 190;
    private static final int ROW = 28;
    private static final int TOP = 24;
    private static final double[] HOURS = {0, 1, 3, 8, 24, 72, 168, 336, 672, 1344};

    private final Sheet sheet;
    private final CaseDesk desk;
    private final Timeline timeline;
    private final double total;

    TimelineChart(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
        this.timeline = desk.worked().timeline();
        this.total = Math.max(1, timeline.total().highIn(Unit.MINUTE));
    }

    /** The times as a table and a file. */
    DataTable data() {
        Words words = sheet.words();
        List<List<String>> rows = new ArrayList<>();
        for (Timeline.TimedStep timed : timeline.steps()) {
            rows.add(List.of(label(timed), minutes(timed.start().low()), minutes(timed.takes().low()),
                    minutes(timed.takes().high()), minutes(timed.handsOn().high()),
                    String.valueOf(timed.moments().stream().filter(TimelineChart::isChange).count())));
        }
        return new DataTable("times", words.say("times.caption"), List.of(
                new DataTable.Column(words.say("times.step"), "step", "", false),
                new DataTable.Column(words.say("times.start"), "earliest start", "min", true),
                new DataTable.Column(words.say("times.least"), "takes at least", "min", true),
                new DataTable.Column(words.say("times.most"), "takes at most", "min", true),
                new DataTable.Column(words.say("times.hands"), "hands-on at most", "min", true),
                new DataTable.Column(words.say("times.changes"), "blotter changes", "", true)), rows);
    }

    /** The drawing with its table. */
    Chart chart(Table table) {
        Words words = sheet.words();
        int bottom = TOP + ROW * timeline.steps().size();
        List<Chart.Mark> marks = new ArrayList<>();
        for (double hours : HOURS) {
            if (hours * 60 <= total) {
                double x = at(hours * 60);
                marks.add(Chart.Mark.line("grid", x, TOP, x, bottom));
                marks.add(Chart.Mark.text(x, bottom + 20, "middle", hours == 0 ? "0" : hours < 24
                        ? sheet.numbers().number(hours) + Amount.UNIT_SPACE + "h"
                        : sheet.numbers().number(hours / 24) + Amount.UNIT_SPACE + "d"));
            }
        }
        for (int i = 0; i < timeline.steps().size(); i++) {
            row(marks, timeline.steps().get(i), TOP + ROW * i);
        }
        legend(marks, bottom + 44);
        return new Chart("times-chart", words.say("times.title"), words.say("times.description"), WIDTH, bottom + 60,
                marks, words.say("times.note"), table);
    }

    private void row(List<Chart.Mark> marks, Timeline.TimedStep timed, double y) {
        double start = timed.start().value();
        double takes = timed.takes().value();
        double hands = Math.min(takes, timed.handsOn().value());
        marks.add(Chart.Mark.text(0, y + 19, "start", label(timed)));
        double x = at(start);
        double width = Math.max(4, at(start + takes) - x);
        marks.add(Chart.Mark.box("bar", "waiting", x, y + 6, width, ROW - 12, minutes(timed.takes().high())));
        marks.add(Chart.Mark.box("bar", "hands", x, y + 6, Math.max(3, width * (takes == 0 ? 1 : hands / takes)),
                ROW - 12, minutes(timed.handsOn().high())));
        timed.moments().stream().filter(TimelineChart::isChange).forEach(moment ->
                marks.add(Chart.Mark.at("tick", "change", at(start + moment.at().value()), y + 6, "")));
        if (step(timed).flatMap(Step::hold).isPresent()) {
            marks.add(Chart.Mark.at("hold", "hold", x - 6, y + 3, ""));
        }
    }

    private void legend(List<Chart.Mark> marks, double y) {
        Words words = sheet.words();
        marks.add(Chart.Mark.box("bar", "hands", 0, y - 10, 26, 12, ""));
        marks.add(Chart.Mark.text(32, y, "start", words.say("times.legend-hands")));
        marks.add(Chart.Mark.box("bar", "waiting", 170, y - 10, 26, 12, ""));
        marks.add(Chart.Mark.text(202, y, "start", words.say("times.legend-waiting")));
        marks.add(Chart.Mark.at("tick", "change", 330, y - 12, ""));
        marks.add(Chart.Mark.text(342, y, "start", words.say("times.legend-change")));
        marks.add(Chart.Mark.at("hold", "hold", 500, y - 14, ""));
        marks.add(Chart.Mark.text(514, y, "start", words.say("times.legend-hold")));
    }

    private double at(double minutes) {
        return LABELS + StrictMath.sqrt(minutes / total) * (WIDTH - LABELS - 20);
    }

    private static boolean isChange(Timeline.Moment moment) {
        return moment.kind().equals("blotter change");
    }

    private java.util.Optional<Step> step(Timeline.TimedStep timed) {
        return desk.treatment().step(timed.step());
    }

    private String label(Timeline.TimedStep timed) {
        int number = timeline.steps().indexOf(timed) + 1;
        return number + ". " + step(timed).map(step -> sheet.words().term("step-kind", step.kind().word()))
                .orElse(timed.step());
    }

    private String minutes(double minutes) {
        return sheet.numbers().fixed(minutes, 0);
    }
}
