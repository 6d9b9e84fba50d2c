package org.benchleaf.compose.classes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.benchleaf.compose.part.DataTable;
import org.benchleaf.derive.classes.Competence;
import org.benchleaf.model.BenchRecord;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.Block;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Link;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Section;
import org.benchleaf.page.SingleSheet;
import org.benchleaf.words.StepTitle;
import org.benchleaf.words.Words;

/** The results of a class for its teacher: what its stations wrote down and what was marked. Never part of a site. */
public final class ClassResults {

    /** Which of several it is, which stands beside each of its values. */
    private static final Set<String> COUNTED = Set.of("bath", "change");

    private final Words words = Words.in("en");
    private final CourseClass course;
    private final TreatmentCase treatment;
    private final List<BenchRecord> records;
    private final List<DataTable> tables;

    /**
     * Reads the records of one class.
     *
     * @param treatment the case that the class works through
     */
    public ClassResults(CourseClass course, TreatmentCase treatment, List<BenchRecord> records) {
        this.course = course;
        this.treatment = treatment;
        this.records = records.stream().sorted(Comparator.comparing(record -> record.seat().orElseThrow().station())).toList();
        this.tables = List.of(work(), readings(), marks(), standing());
    }

    /** The page. */
    public SingleSheet page() {
        String title = words.say("class-results.title", "class", course.title());
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Opening(Optional.of(words.say("class-results.kind")), title, Optional.of(words.say("class-results.lead")), List.of(),
                Optional.of(new Opening.Notice(words.say("notice.word"), words.say("class-results.private")))));
        blocks.add(new Section("stations", words.say("class.stations"), Optional.empty(), List.of(stations())));
        for (DataTable table : tables) {
            blocks.add(new Section(table.id() + "-part", table.caption(), table.rows().isEmpty()
                    ? Optional.of(words.say("class-results.none")) : Optional.empty(),
                    table.rows().isEmpty() ? List.of() : List.of(table.table(Optional.of(Link.to(words.say("class-results.file",
                            "what", table.caption()), table.file()))))));
        }
        return new SingleSheet(title, words.language(), blocks);
    }

    /** The same as tables for a spreadsheet. */
    public List<DataFile> files() {
        return tables.stream().map(table -> new DataFile(table.file(), table.csv())).toList();
    }

    /** Each station of the class with who worked there; those of which nothing was handed in are told. */
    private Facts stations() {
        Map<Integer, List<BenchRecord.Seat>> seats = records.stream().map(record -> record.seat().orElseThrow())
                .collect(Collectors.groupingBy(BenchRecord.Seat::station, LinkedHashMap::new, Collectors.toList()));
        List<Fact> facts = new ArrayList<>();
        for (int station = 1; station <= course.stations(); station++) {
            List<BenchRecord.Seat> here = seats.getOrDefault(station, List.of());
            facts.add(Fact.of(words.say("class.station-n", "n", station), here.isEmpty() ? words.say("class-results.not-handed-in")
                    : here.stream().map(this::seat).collect(Collectors.joining("; "))));
        }
        return new Facts(facts);
    }

    private String seat(BenchRecord.Seat seat) {
        return seat.trainees().orElse(words.say("class.not-stated")) + seat.issue().map(issue -> ", "
                + words.say("class-results.issue", "n", issue)).orElse("");
    }

    private DataTable work() {
        List<List<DataTable.Cell>> rows = new ArrayList<>();
        for (BenchRecord record : records) {
            record.steps().forEach(entry -> rows.add(row(entry.step(), record, List.of(entry.account().doneBy(),
                    entry.began().map(Object::toString), entry.ended().map(Object::toString),
                    entry.released().map(BenchRecord.Release::by), entry.released().flatMap(BenchRecord.Release::at)
                            .map(Object::toString), entry.seen(), entry.because(), entry.account().noticed(),
                    entry.account().deviation(), entry.account().initials()))));
        }
        return table("work", rows, "done-by", "began", "ended", "released-by", "released-at", "seen", "because", "noticed",
                "deviation", "initials");
    }

    /** One line for each thing that was read, weighed or added. */
    private DataTable readings() {
        List<List<DataTable.Cell>> rows = new ArrayList<>();
        for (BenchRecord record : records) {
            for (BenchRecord.Entry entry : record.steps()) {
                entry.readings().forEach(reading -> rows.addAll(lines(record, entry.step(), "bath " + reading.get("bath"), reading)));
                entry.parts().forEach((part, values) -> rows.addAll(lines(record, entry.step(), part.name(), values)));
            }
        }
        return table("readings", rows, "of", "what", "value");
    }

    private List<List<DataTable.Cell>> lines(BenchRecord record, String step, String of, Map<String, String> values) {
        return values.entrySet().stream().filter(value -> !COUNTED.contains(value.getKey())).map(value -> row(step, record,
                List.of(Optional.of(of), Optional.of(value.getKey()), Optional.of(value.getValue())))).toList();
    }

    private DataTable marks() {
        List<List<DataTable.Cell>> rows = new ArrayList<>();
        for (BenchRecord record : records) {
            record.marks().forEach(mark -> rows.add(row(mark.step(), record, List.of(mark.trainee(), Optional.of(mark.will()),
                    mark.met().map(met -> words.say(met ? "record-form.met-yes" : "record-form.met-no")),
                    mark.helpToday().map(String::valueOf), mark.helpNext().map(String::valueOf), mark.assessor(),
                    mark.remark()))));
        }
        return table("marks", rows, "trainee", "will", "met", "help-today", "help-next", "assessor", "remark");
    }

    /** Who is practised in which step; only then may 'practised: yes' be written for them. */
    private DataTable standing() {
        List<List<DataTable.Cell>> rows = new Competence(course, records).answers().stream().map(answer -> List.of(
                DataTable.Cell.words(answer.trainee()), DataTable.Cell.words(step(answer.step())),
                DataTable.Cell.words(words.say("class-results.standing." + answer.standing().name().toLowerCase(Locale.ROOT))),
                DataTable.Cell.words(String.join("; ", answer.open())))).toList();
        return new DataTable("standing", words.say("class-results.standing", "times",
                words.times(course.papers().practice().times()), "help",
                course.papers().practice().help()), columns("trainee", "step", "practised", "open"), rows);
    }

    private DataTable table(String id, List<List<DataTable.Cell>> rows, String... more) {
        List<DataTable.Column> columns = new ArrayList<>(columns("step", "station"));
        columns.addAll(columns(more));
        return new DataTable(id, words.say("class-results." + id), columns, rows);
    }

    private List<DataTable.Column> columns(String... keys) {
        Function<String, DataTable.Column> column = key -> DataTable.Column.words(words.say("class-results.column." + key),
                key.replace('-', ' '));
        return List.of(keys).stream().map(column).toList();
    }

    private List<DataTable.Cell> row(String step, BenchRecord record, List<Optional<String>> values) {
        List<DataTable.Cell> cells = new ArrayList<>(List.of(DataTable.Cell.words(step(step)),
                DataTable.Cell.words(String.valueOf(record.seat().orElseThrow().station()))));
        values.forEach(value -> cells.add(value.map(DataTable.Cell::words)
                .orElse(DataTable.Cell.missing(words.say("class.not-stated")))));
        return cells;
    }

    private String step(String id) {
        return treatment.step(id).map(new StepTitle(words, treatment)::of).orElse(id);
    }
}
