package org.benchleaf.compose.classes;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.compose.part.DataTable;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.ClassPlan;
import org.benchleaf.derive.classes.ScheduleReading;
import org.benchleaf.json.JsonText;
import org.benchleaf.page.DataFile;

/** The files of a class: its plan as CSV and JSON, and a calendar for each who takes part. */
final class ClassFiles {

    private ClassFiles() {
    }

    static List<DataFile> of(ClassDesk desk) {
        List<DataFile> files = new ArrayList<>();
        DataTable plan = plan(desk);
        Sheet words = desk.sheet(desk.desk().names().ofClass().get(0));
        files.add(new DataFile(desk.path("-plan.csv"), plan.csv()));
        files.add(new DataFile(desk.path("-plan.csv-metadata.json"), plan.metadata(desk.desk().treatment().language(),
                words.words().say("class.file.csv-about"), Optional.of(desk.desk().treatment().publication().licence()),
                desk.desk().basis())));
        files.add(new DataFile(desk.path("-plan.json"), json(desk)));
        new ClassCalendar(desk, words).all().forEach((name, text) ->
                files.add(new DataFile(desk.path("-" + name + ".ics"), text)));
        return files;
    }

    private static DataTable plan(ClassDesk desk) {
        String file = desk.path("-plan.csv");
        List<List<DataTable.Cell>> rows = new ArrayList<>();
        int station = 0;
        for (ScheduleReading.Turn turn : desk.reading().whole()) {
            if (turn.station() != station) {
                station = turn.station();
                ScheduleReading.Briefing briefing = desk.reading().briefing(station);
                rows.add(row(station, "", "briefing", briefing.from(), briefing.to(),
                        List.of("trainee of station " + station, "supervisor")));
            }
            rows.add(row(station, turn.step(), turn.work(), turn.from(), turn.to(), turn.takes()));
        }
        return new DataTable(file.substring(file.lastIndexOf('/') + 1, file.lastIndexOf('.')), desk.course().title(),
                List.of(DataTable.Column.numbers("station", "station"), DataTable.Column.words("step of the case", "step"),
                        DataTable.Column.words("what is done", "work"), DataTable.Column.words("begins, by the clock of the room", "from"),
                        DataTable.Column.words("ends, by the clock of the room", "to"),
                        DataTable.Column.words("who and what it takes", "takes")), rows);
    }

    private static List<DataTable.Cell> row(int station, String step, String work, LocalDateTime from, LocalDateTime to,
            List<String> takes) {
        return List.of(DataTable.Cell.number(String.valueOf(station)), DataTable.Cell.words(step), DataTable.Cell.words(work),
                DataTable.Cell.words(from.toString()), DataTable.Cell.words(to.toString()), DataTable.Cell.words(String.join("; ", takes)));
    }

    private static String json(ClassDesk desk) {
        List<Object> briefings = new ArrayList<>();
        for (int station = 1; station <= desk.course().stations(); station++) {
            ScheduleReading.Briefing briefing = desk.reading().briefing(station);
            briefings.add(JsonText.object("station", station, "from", briefing.from().toString(), "to", briefing.to().toString()));
        }
        List<Object> parts = new ArrayList<>();
        for (ScheduleReading.Turn turn : desk.reading().turns()) {
            parts.add(JsonText.object("station", turn.station(), "part", turn.name(), "from", turn.from().toString(),
                    "to", turn.to().toString(), "takes", turn.takes()));
        }
        List<Object> begin = new ArrayList<>();
        for (ClassPlan.Start start : desk.plan().starts()) {
            begin.add(JsonText.object("solution", start.solution(), "batch", start.batch().number(), "begin", start.begin().toString(),
                    "ready", start.readyFor().toString()));
        }
        return JsonText.script(JsonText.object("class", desk.course().id(), "title", desk.course().title(),
                "minutes", desk.reading().minutes(), "floor", desk.reading().floor(), "begin", begin, "briefings", briefings,
                "parts", parts)) + "\n";
    }
}
