package org.benchleaf.compose.classes;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.ScheduleReading;
import org.benchleaf.model.Studio;
import org.benchleaf.page.Block;
import org.benchleaf.page.Chart;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** The plan of a class: its first day as a drawing with a line for each station, and all of it as a table. */
final class StationChart {

    private static final int TOP = 4;
    private static final int ROW = 40;
    private static final int BAR = 14;
    private static final int HOUR = 60;
    private static final int DAY = 24 * HOUR;
    private static final int MOST_IN_HOURS = 2 * DAY;
    private static final int START = 6;
    /** Stands before every part of a station. */
    private static final int BRIEFING = -1;
    /** Stations in one table, so that it is no wider than a sheet of paper. */
    private static final int STATIONS_IN_A_TABLE = 6;

    private final Sheet sheet;
    private final ClassDesk desk;
    private final List<ScheduleReading.Turn> turns;
    private final List<Chart.Mark> marks = new ArrayList<>();
    private final int shown;

    StationChart(Sheet sheet, ClassDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
        this.turns = desk.reading().whole();
        LocalDate day = desk.course().starts().toLocalDate();
        this.shown = turns.stream().filter(turn -> turn.from().toLocalDate().equals(day) && turn.isHandsOn())
                .mapToInt(ScheduleReading.Turn::end).filter(end -> end <= DAY).max().orElse(HOUR);
    }

    Section section() {
        Words words = sheet.words();
        ScheduleReading reading = desk.reading();
        String takes = length(sheet, reading.minutes());
        String lead = reading.minutes() == reading.floor() ? words.say("class.plan-shortest", "takes", takes)
                : words.say("class.plan-floor", "takes", takes, "floor", length(sheet, reading.floor()));
        List<Block> blocks = new ArrayList<>(new Untested(sheet, desk).ofClass());
        blocks.add(chart());
        return new Section("plan", words.say("class.plan"), Optional.of(lead + " " + gaps()), blocks);
    }

    /** When nobody works, and what becomes of work and sheets then. */
    private String gaps() {
        Words words = sheet.words();
        Studio studio = sheet.library().studio();
        List<String> told = new ArrayList<>();
        if (studio.closes().isAfter(studio.opens())) {
            told.add(words.say("class.plan-hours", "opens", sheet.numbers().clock(studio.opens()),
                    "closes", sheet.numbers().clock(studio.closes())));
        }
        desk.course().day().breaks().forEach(one -> told.add(words.say("class.plan-breaks", "from", sheet.numbers().clock(one.from()),
                "to", sheet.numbers().clock(one.to()))));
        told.add(words.say("class.plan-gaps"));
        if (desk.reading().turns().stream().anyMatch(ScheduleReading.Turn::isLiftedOut)) {
            told.add(words.say("class.plan-changes"));
        }
        return String.join(" ", told);
    }

    /** Minutes in words. */
    static String length(Sheet sheet, int minutes) {
        if (minutes < DAY || minutes % HOUR == 0) {
            return sheet.numbers().duration(Quantity.of(minutes, Unit.MINUTE)).text();
        }
        return minutes < MOST_IN_HOURS ? sheet.words().say("class.hours-minutes", "hours", minutes / HOUR, "minutes", minutes % HOUR)
                : sheet.words().say("class.days-hours-minutes", "days", minutes / DAY, "hours", minutes % DAY / HOUR, "minutes",
                        minutes % HOUR);
    }

    private Chart chart() {
        Words words = sheet.words();
        int stations = desk.course().stations();
        int bottom = TOP + ROW * stations + 6;
        axis(bottom);
        for (int station = 1; station <= stations; station++) {
            row(station, TOP + ROW * (station - 1));
        }
        double y = bottom + 46;
        marks.add(Chart.Mark.box("bar", "hands", 0, y - 12, 28, BAR, ""));
        marks.add(Chart.Mark.text(38, y, "start", words.say("times.legend-hands")));
        marks.add(Chart.Mark.box("bar", "waiting", 0, y + 14, 28, BAR, ""));
        marks.add(Chart.Mark.hatch("hatch", 0, y + 14, 28, BAR));
        marks.add(Chart.Mark.text(38, y + 26, "start", words.say("class.legend-waiting")));
        marks.add(Chart.Mark.at("hold", "hold", 10, y + 38, ""));
        marks.add(Chart.Mark.text(38, y + 54, "start", words.say("times.legend-hold")));
        return new Chart(List.of(Chart.Drawing.of("plan-chart", words.say("class.chart-title"),
                words.say("class.chart-description"), y + 64, marks, words.say("class.chart-note"))), "plan-numbers",
                tables(), true);
    }

    private double at(int minute) {
        return START + (Chart.WIDTH - START) * (double) Math.min(minute, shown) / shown;
    }

    private void axis(int bottom) {
        LocalDateTime starts = desk.course().starts();
        int first = (HOUR - starts.getMinute()) % HOUR;
        int step = shown > 6 * HOUR ? 2 * HOUR : HOUR;
        for (int minute = first; minute <= shown; minute += step) {
            marks.add(Chart.Mark.line("grid", at(minute), TOP, at(minute), bottom));
            marks.add(Chart.Mark.text(Math.min(at(minute), Chart.WIDTH - 22), bottom + 18, minute == first ? "start" : "middle",
                    sheet.numbers().clock(starts.plusMinutes(minute).toLocalTime())));
        }
    }

    private void row(int station, double top) {
        marks.add(Chart.Mark.text(0, top + 13, "start", sheet.words().say("class.station-n", "n", station)));
        double y = top + 22;
        turns.stream().filter(turn -> turn.station() == station && turn.start() < shown).forEach(turn -> {
            double x = at(turn.start());
            double width = Math.max(1, at(turn.end()) - x);
            marks.add(Chart.Mark.box("bar", turn.isHandsOn() ? "hands" : "waiting", x, y, width, BAR,
                    desk.clock(sheet, turn.from())));
            if (!turn.isHandsOn()) {
                marks.add(Chart.Mark.hatch("hatch", x, y, width, BAR));
            }
            if (turn.isHold()) {
                marks.add(Chart.Mark.at("hold", "hold", x, y - 3, ""));
            }
        });
    }

    /** A row for each piece of work, a column for each station. */
    private List<Table> tables() {
        List<Table> tables = new ArrayList<>();
        int stations = desk.course().stations();
        for (int first = 1; first <= stations; first += STATIONS_IN_A_TABLE) {
            tables.add(table(first, Math.min(stations, first + STATIONS_IN_A_TABLE - 1)));
        }
        return tables;
    }

    private Table table(int first, int last) {
        Words words = sheet.words();
        List<Table.Column> columns = new ArrayList<>(List.of(new Table.Column(words.say("class.work"), false)));
        for (int station = first; station <= last; station++) {
            columns.add(new Table.Column(words.say("class.station-n", "n", station), true));
        }
        Map<Integer, List<RichText>> rows = new LinkedHashMap<>();
        List<RichText> briefing = new ArrayList<>(List.of(RichText.of(words.say("class.briefing"))));
        IntStream.rangeClosed(first, last).forEach(station -> briefing.add(RichText.of(desk.clock(sheet,
                desk.reading().briefing(station).from()))));
        rows.put(BRIEFING, briefing);
        desk.reading().whole().stream().filter(turn -> first <= turn.station() && turn.station() <= last).forEach(turn ->
                rows.computeIfAbsent(turn.part(), any -> new ArrayList<>(List.of(RichText.of(
                        desk.work(sheet, turn))))).add(RichText.of(desk.clock(sheet, turn.from()))));
        return new Table("plan-table-" + first, words.say("class.plan-caption", "first", first, "last", last), columns,
                List.copyOf(rows.values()), Optional.empty());
    }
}
