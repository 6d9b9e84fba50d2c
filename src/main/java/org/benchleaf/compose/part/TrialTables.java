package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.StatedValue;
import org.benchleaf.model.Trial;
import org.benchleaf.page.Block;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Section;
import org.benchleaf.words.Words;

/** Tells a trial: what it asks, its arms side by side, and a table of arms for each thing measured. */
public final class TrialTables {

    private final Sheet sheet;
    private final Words words;
    private final CaseDesk desk;
    private final Trial trial;
    private final int number;

    public TrialTables(Sheet sheet, CaseDesk desk, Trial trial) {
        this.sheet = sheet;
        this.desk = desk;
        this.number = desk.treatment().trials().indexOf(trial);
        this.words = sheet.words();
        this.trial = trial;
    }

    /** The arms alone, for the public. */
    public Section arms() {
        return section(List.of(facts(), armTable().table(Optional.empty())));
    }

    /** The arms and what was read of each, with the files. */
    public Section measured() {
        List<Block> blocks = new ArrayList<>(List.of(facts()));
        tables().forEach(table -> blocks.add(table.table(desk.file(sheet, table))));
        return section(blocks);
    }

    private Section section(List<Block> blocks) {
        return new Section(id(), words.say("trials.heading", "question", trial.question()),
                Optional.of(words.say("trials.lead")), blocks);
    }

    /** What differs, what is alike, what the arms are compared with; that no control is on record where none is. */
    private Facts facts() {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of(words.say("trial.of"), ground()));
        facts.add(Fact.of(words.say("trial.varies"), trial.varies()));
        facts.add(Fact.of(words.say("trial.alike"), trial.alike().isEmpty() ? words.missing(untold("alike"))
                : String.join("; ", trial.alike())));
        List<String> controls = trial.arms().stream().filter(Trial.Arm::control).map(Trial.Arm::is).toList();
        facts.add(Fact.of(words.say("trial.controls"), controls.isEmpty() ? words.say("trial.controls-not-recorded")
                : String.join("; ", controls)));
        String meetings = trial.arms().stream().flatMap(arm -> arm.steps().stream()).map(new MeetingWords(sheet, desk)::sentences)
                .filter(met -> !met.isEmpty()).distinct().collect(Collectors.joining(" "));
        if (!meetings.isEmpty()) {
            facts.add(Fact.of(words.say("meeting.name"), meetings));
        }
        trial.found().ifPresent(found -> facts.add(Fact.of(words.say("trial.found"), found)));
        return new Facts(facts);
    }

    private String ground() {
        String what = words.told(trial.what());
        return trial.of().map(of -> words.say("trial.ground", "of", words.term("trial-ground", of.word()), "what", what))
                .orElseGet(() -> words.say("trial.ground-missing", "what", what, "missing", words.missing(untold("of"))));
    }

    /** The arms; then, for each measure, the arms with what was read. */
    public List<DataTable> tables() {
        List<DataTable> tables = new ArrayList<>(List.of(armTable()));
        for (Trial.Measure measure : trial.results()) {
            tables.add(measured(measure, id() + "-" + tables.size()));
        }
        return tables;
    }

    /** The anchor of the trial and the beginning of the names of its tables. */
    private String id() {
        return "trial-" + Paths.fileName(trial.id());
    }

    private DataTable armTable() {
        return new DataTable(id() + "-arms", words.say("trial.arms", "question", trial.question()), List.of(
                DataTable.Column.words(trial.varies(), "arm"), DataTable.Column.words(words.say("trial.role"), "role"),
                DataTable.Column.known(words.say("trial.n"), "n")),
                trial.arms().stream().map(arm -> List.of(DataTable.Cell.words(arm.is()),
                        DataTable.Cell.words(words.say(arm.control() ? "trial.control" : "trial.treated")), count(arm))).toList());
    }

    private DataTable measured(Trial.Measure measure, String id) {
        return new DataTable(id, caption(measure), Stream.concat(Stream.of(DataTable.Column.words(words.say("trial.arm"), "arm")),
                keys(measure).map(key -> DataTable.Column.words(words.say("trial." + key), key))).toList(),
                trial.arms().stream().map(arm -> row(measure, arm)).toList());
    }

    /** What the measure tells of each arm; a column that no arm has anything for only where it is usual. */
    private static Stream<String> keys(Trial.Measure measure) {
        Stream<String> ends = measure.isOfDifferences() ? Stream.of() : Stream.of("before", "after");
        return Stream.of(ends, column(measure, "difference", Trial.Reading::difference), column(measure, "rank", Trial.Reading::rank))
                .flatMap(keys -> keys);
    }

    private static Stream<String> column(Trial.Measure measure, String key, Function<Trial.Reading, Optional<?>> value) {
        return measure.readings().stream().anyMatch(reading -> value.apply(reading).isPresent()) ? Stream.of(key) : Stream.of();
    }

    private String caption(Trial.Measure measure) {
        String told = words.say(MissingValue.read(measure.method()).isPresent() ? "trial.measured-method-missing" : "trial.measured",
                "measure", measure.measure(), "method", words.told(measure.method()));
        boolean bare = measure.readings().stream().allMatch(reading -> reading.before().isEmpty() && reading.after().isEmpty()
                && reading.difference().isEmpty());
        return bare && !measure.unit().symbol().isEmpty() ? words.say("trial.measured-in", "measured", told,
                "unit", measure.unit().symbol()) : told;
    }

    private List<DataTable.Cell> row(Trial.Measure measure, Trial.Arm arm) {
        Optional<Trial.Reading> reading = measure.of(arm);
        return Stream.concat(Stream.of(arm.is()), keys(measure).map(key -> cell(measure, reading, key)))
                .map(DataTable.Cell::words).toList();
    }

    private String cell(Trial.Measure measure, Optional<Trial.Reading> reading, String key) {
        return switch (key) {
            case "before" -> reading.flatMap(Trial.Reading::wordsBefore)
                    .orElseGet(() -> stated(measure, reading, reading.flatMap(Trial.Reading::before), key));
            case "after" -> after(measure, reading);
            case "difference" -> stated(measure, reading, reading.flatMap(Trial.Reading::difference), key);
            default -> reading.flatMap(Trial.Reading::rank).orElseGet(() -> words.missing(unread(measure, reading, key)));
        };
    }

    /** What was read of an arm in the end, or by how much it differs from before, and where the arm stands among them. */
    public String read(Trial.Measure measure, Trial.Reading reading) {
        String told = measure.isOfDifferences()
                ? words.say("trial.by-difference", "value", cell(measure, Optional.of(reading), "difference"))
                : after(measure, Optional.of(reading));
        return reading.rank().map(rank -> words.say("trial.ranked", "value", told, "rank", rank)).orElse(told);
    }

    /** What was read of an arm in the end, or what the case says in its place. */
    private String after(Trial.Measure measure, Optional<Trial.Reading> reading) {
        return reading.flatMap(Trial.Reading::wordsAfter)
                .orElseGet(() -> stated(measure, reading, reading.flatMap(Trial.Reading::after), "after"));
    }

    private String stated(Trial.Measure measure, Optional<Trial.Reading> reading, Optional<StatedValue> value, String key) {
        return new StatedWords(words, sheet.numbers(), measure.unit()).of(value, unread(measure, reading, key));
    }

    private Optional<MissingValue> unread(Trial.Measure measure, Optional<Trial.Reading> reading, String key) {
        return reading.flatMap((Trial.Reading one) -> untold("results", trial.results().indexOf(measure), "readings",
                measure.readings().indexOf(one), key));
    }

    /** What the case says in the place of a value of the trial. */
    private Optional<MissingValue> untold(Object... way) {
        return desk.treatment().untold().at(Stream.concat(Stream.of("trials", number), Stream.of(way)).toArray());
    }

    private DataTable.Cell count(Trial.Arm arm) {
        return arm.count().map(count -> DataTable.Cell.number(String.valueOf(count)))
                .orElseGet(() -> DataTable.Cell.missing(words.missing(untold("arms", trial.arms().indexOf(arm), "n"))));
    }
}
