package org.benchleaf.compose.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.DataTable;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.time.Timeline;
import org.benchleaf.model.Part;
import org.benchleaf.model.StatedValue.Form;
import org.benchleaf.model.Step;
import org.benchleaf.page.Chart;
import org.benchleaf.page.Table;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.words.StepTitle;
import org.benchleaf.words.Words;

/**
 * Lays the bench strip on its side: one line a step, hands-on time full, waiting time hatched, changes of blotters as
 * ticks, hold points as double bars. The time narrows to the right, since minutes and days must stand on one strip.
 */
public final class TimelineChart {

    private static final int START = 10;
    private static final int ROW = 46;
    private static final int BAR = 14;
    private static final int TOP = 4;
    private static final int BETWEEN_MARKS = 46;
    /** A shorter line between two ends is a blot. */
    private static final int LEAST_REACH = 6;
    private static final double[] HOURS = {0, 0.25, 0.5, 1, 2, 4, 8, 24, 48, 96, 168, 336, 672, 1344};

    private final Sheet sheet;
    private final CaseDesk desk;
    private final Timeline timeline;
    private final double total;
    private final List<Chart.Mark> marks = new ArrayList<>();

    public TimelineChart(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
        this.timeline = desk.worked().timeline();
        this.total = Math.max(1, timeline.total().highIn(Unit.MINUTE));
    }

    /** Whether no step has a time on record. */
    public boolean isEmpty() {
        return timeline.steps().stream().noneMatch(Timeline.TimedStep::known);
    }

    /** The times as a table and a file: of what is on record alone how long each step took, else as they were planned. */
    public DataTable data() {
        return desk.worked().isOnRecordAlone() ? recorded() : planned();
    }

    private DataTable recorded() {
        Words words = sheet.words();
        List<DataTable.Column> columns = new ArrayList<>(List.of(DataTable.Column.words(words.say("times.step"), "step"),
                DataTable.Column.words(words.say("times.took"), "took, as given")));
        boolean ends = timeline.steps().stream().anyMatch(timed -> timed.known() && !isOneTime(timed));
        if (ends) {
            columns.add(DataTable.Column.times(words.say("times.took-least"), "took at least"));
            columns.add(DataTable.Column.times(words.say("times.took-most"), "took at most"));
        }
        return new DataTable("times", words.say("times.recorded"), columns, timeline.steps().stream().map(timed -> Stream.concat(
                Stream.of(DataTable.Cell.words(label(timed)), took(timed)),
                ends ? Stream.of(end(timed, least(timed)), end(timed, most(timed))) : Stream.<DataTable.Cell>of()).toList()).toList());
    }

    /** How long a step took at least or at most; of one time, or about one, neither is told. */
    private DataTable.Cell end(Timeline.TimedStep timed, DataTable.Cell end) {
        return tookAbout(timed) ? notRecorded(timed) : timed.known() && isOneTime(timed)
                ? DataTable.Cell.missing(sheet.words().say("times.one-time")) : end;
    }

    /** Whether it is told how long a step took, with neither ends nor a bound. */
    private boolean isOneTime(Timeline.TimedStep timed) {
        return !timed.atLeast() && Stream.of(Form.LESS_THAN, Form.ABOUT).noneMatch(form -> isTold(timed, form))
                && timed.takes().lowIn(Unit.MINUTE) == timed.takes().highIn(Unit.MINUTE);
    }

    private DataTable.Cell took(Timeline.TimedStep timed) {
        return timed.known() ? DataTable.Cell.words(told(timed)) : notRecorded(timed);
    }

    /** Whether it is told how long a step took about, and so neither how long at least nor at most. */
    private boolean tookAbout(Timeline.TimedStep timed) {
        return isTold(timed, Form.ABOUT);
    }

    private DataTable planned() {
        Words words = sheet.words();
        return new DataTable("times", words.say("times.caption"), List.of(
                DataTable.Column.words(words.say("times.step"), "step"),
                DataTable.Column.times(words.say("times.start-least"), "starts after at least"),
                DataTable.Column.times(words.say("times.start-most"), "starts after at most"),
                DataTable.Column.times(words.say("times.least"), "takes at least"),
                DataTable.Column.times(words.say("times.most"), "takes at most"),
                DataTable.Column.times(words.say("times.hands-least"), "hands-on at least"),
                DataTable.Column.times(words.say("times.hands-most"), "hands-on at most"),
                DataTable.Column.numbers(words.say("times.changes"), "blotter changes"),
                DataTable.Column.words(words.say("times.hold"), "hold point")),
                timeline.steps().stream().map(this::row).toList());
    }

    private List<DataTable.Cell> row(Timeline.TimedStep timed) {
        return List.of(DataTable.Cell.words(label(timed)), start(timed, timed.start().lowIn(Unit.MINUTE)),
                start(timed, timed.start().highIn(Unit.MINUTE)), least(timed), most(timed), handsLeast(timed), handsMost(timed),
                changes(timed), DataTable.Cell.words(sheet.words().say(isHold(timed) ? "times.yes" : "times.no")));
    }

    private DataTable.Cell start(Timeline.TimedStep timed, double minutes) {
        return timed.startKnown() ? cell(minutes) : notRecorded(timed);
    }

    /** How often blotters are changed; no number for a step without blotters, and for one whose changes nobody told. */
    private DataTable.Cell changes(Timeline.TimedStep timed) {
        Optional<Part.Blotters> blotters = desk.treatment().step(timed.step()).flatMap(step -> step.part(Part.Blotters.class));
        if (blotters.isEmpty()) {
            return DataTable.Cell.missing(sheet.words().say("times.no"));
        }
        return blotters.get().changes().isEmpty() ? DataTable.Cell.missing(sheet.words().notRecorded())
                : DataTable.Cell.number(String.valueOf(timed.moments().stream().filter(TimelineChart::isChange).count()));
    }

    private DataTable.Cell least(Timeline.TimedStep timed) {
        return isTold(timed, Form.LESS_THAN) ? notRecorded(timed) : length(timed, timed.takes().lowIn(Unit.MINUTE));
    }

    private DataTable.Cell most(Timeline.TimedStep timed) {
        return timed.atLeast() ? notRecorded(timed) : length(timed, timed.takes().highIn(Unit.MINUTE));
    }

    private DataTable.Cell handsLeast(Timeline.TimedStep timed) {
        return isWholeByHand(timed) ? least(timed) : isHands(timed, Form.LESS_THAN) ? notRecorded(timed)
                : length(timed, timed.handsOn().lowIn(Unit.MINUTE));
    }

    private DataTable.Cell handsMost(Timeline.TimedStep timed) {
        return isWholeByHand(timed) ? most(timed) : isHands(timed, Form.MORE_THAN) ? notRecorded(timed)
                : length(timed, timed.handsOn().highIn(Unit.MINUTE));
    }

    /** Whether the case tells nothing else than that the whole step needs a person. */
    private boolean isWholeByHand(Timeline.TimedStep timed) {
        return step(timed).flatMap(Step::handsOn).isEmpty();
    }

    private boolean isHands(Timeline.TimedStep timed, Form form) {
        return step(timed).flatMap(Step::handsOn).filter(time -> time.form() == form).isPresent();
    }

    private boolean isTold(Timeline.TimedStep timed, Form form) {
        return step(timed).flatMap(Step::takes).filter(time -> time.form() == form).isPresent();
    }

    private String told(Timeline.TimedStep timed) {
        return step(timed).map(step -> new StepLength(sheet).of(step, timed)).orElseGet(sheet.words()::notRecorded);
    }

    private DataTable.Cell length(Timeline.TimedStep timed, double minutes) {
        return timed.known() ? cell(minutes) : notRecorded(timed);
    }

    private DataTable.Cell notRecorded(Timeline.TimedStep timed) {
        return DataTable.Cell.missing(untold(timed));
    }

    /** Why there is no time: what the case says in its place. */
    private String untold(Timeline.TimedStep timed) {
        return sheet.words().missing(step(timed).flatMap(Step::timeMissing));
    }

    private DataTable.Cell cell(double minutes) {
        return new DataTable.Cell(words(minutes), DataTable.Cell.number(sheet.numbers().fixed(minutes, 0)).plain());
    }

    /** The drawing. */
    public Chart chart(List<Table> below) {
        Words words = sheet.words();
        int bottom = TOP + ROW * timeline.steps().size() + 6;
        axis(bottom);
        for (int i = 0; i < timeline.steps().size(); i++) {
            row(timeline.steps().get(i), TOP + ROW * i);
        }
        double end = legend(bottom + 52);
        return new Chart(List.of(Chart.Drawing.of("times-chart", words.say("times.title"), words.say("times.description"),
                end, marks, words.say("times.note"))), "times-numbers", below, true);
    }

    private void axis(int bottom) {
        double last = -BETWEEN_MARKS;
        for (double hours : HOURS) {
            double x = at(hours * 60);
            if (hours * 60 <= total && x - last >= BETWEEN_MARKS && x < Chart.WIDTH - START) {
                marks.add(Chart.Mark.line("grid", x, TOP, x, bottom));
                marks.add(Chart.Mark.text(x, bottom + 18, "middle", hours == 0 ? "0" : words(hours * 60)));
                last = x;
            }
        }
    }

    /** A bar reaches from the earliest start as far as the step may take; the line in it from its least to its most. */
    private void row(Timeline.TimedStep timed, double top) {
        double start = timed.start().lowIn(Unit.MINUTE);
        double y = top + 26;
        double x = at(start);
        double end = Math.max(x + 4, at(start + timed.takes().highIn(Unit.MINUTE)));
        double hands = Math.min(end - x, Math.max(3, at(start + timed.handsOn().highIn(Unit.MINUTE)) - x));
        marks.add(Chart.Mark.text(0, top + 18, "start", label(timed)));
        if (!timed.known()) {
            marks.add(Chart.Mark.text(Chart.WIDTH, top + 18, "end", untold(timed)));
            return;
        }
        marks.add(Chart.Mark.text(Chart.WIDTH, top + 18, "end", told(timed)));
        marks.add(Chart.Mark.box("bar", "waiting", x, y, end - x, BAR, ends(least(timed), most(timed))));
        if (end - x > hands) {
            marks.add(Chart.Mark.hatch("hatch", x + hands, y, end - x - hands, BAR));
        }
        marks.add(Chart.Mark.box("bar", "hands", x, y, hands, BAR, ends(handsLeast(timed), handsMost(timed))));
        double least = at(start + timed.takes().lowIn(Unit.MINUTE));
        if (end - least >= LEAST_REACH) {
            marks.add(Chart.Mark.reach("span", least, end, y + BAR / 2.0, ""));
        }
        timed.moments().stream().filter(TimelineChart::isChange).forEach(moment -> marks.add(
                Chart.Mark.at("tick", "change", at(start + moment.at().in(Unit.MINUTE)), y - 4, "")));
        if (isHold(timed)) {
            marks.add(Chart.Mark.at("hold", "hold", Math.max(2, x - 9), y - 3, ""));
        }
    }

    private double legend(double y) {
        Words words = sheet.words();
        int second = Chart.WIDTH / 2;
        marks.add(Chart.Mark.box("bar", "hands", 0, y - 12, 28, BAR, ""));
        marks.add(Chart.Mark.text(38, y, "start", words.say("times.legend-hands")));
        marks.add(Chart.Mark.box("bar", "waiting", second, y - 12, 28, BAR, ""));
        marks.add(Chart.Mark.hatch("hatch", second, y - 12, 28, BAR));
        marks.add(Chart.Mark.text(second + 38, y, "start", words.say("times.legend-waiting")));
        boolean changes = timeline.steps().stream().anyMatch(timed -> timed.moments().stream()
                .anyMatch(TimelineChart::isChange));
        boolean holds = timeline.steps().stream().anyMatch(this::isHold);
        if (changes) {
            marks.add(Chart.Mark.at("tick", "change", 14, y + 16, ""));
            marks.add(Chart.Mark.text(38, y + 26, "start", words.say("times.legend-change")));
        }
        if (holds) {
            int x = changes ? second : 0;
            marks.add(Chart.Mark.at("hold", "hold", x + 10, y + 11, ""));
            marks.add(Chart.Mark.text(x + 38, y + 26, "start", words.say("times.legend-hold")));
        }
        return y + (changes || holds ? 36 : 10);
    }

    private double at(double minutes) {
        return START + StrictMath.sqrt(minutes / total) * (Chart.WIDTH - 2 * START);
    }

    /** Both ends as their cells tell them; one where they are the same, or one of them is not told. */
    private String ends(DataTable.Cell least, DataTable.Cell most) {
        return Stream.of(least, most).filter(cell -> !cell.plain().isEmpty()).map(DataTable.Cell::shown).distinct()
                .collect(Collectors.joining("–"));
    }

    private static boolean isChange(Timeline.Moment moment) {
        return moment.kind().equals("blotter change");
    }

    private boolean isHold(Timeline.TimedStep timed) {
        return step(timed).flatMap(Step::hold).isPresent();
    }

    private Optional<Step> step(Timeline.TimedStep timed) {
        return desk.treatment().step(timed.step());
    }

    private String label(Timeline.TimedStep timed) {
        int number = timeline.steps().indexOf(timed) + 1;
        return number + ". " + step(timed).map(step -> new StepTitle(sheet.words(), desk.treatment()).kind(step))
                .orElse(timed.step());
    }

    private String words(double minutes) {
        return sheet.numbers().duration(Quantity.of(minutes, Unit.MINUTE)).text();
    }
}
