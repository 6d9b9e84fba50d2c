package org.benchleaf.compose.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.compose.chart.ColourChart;
import org.benchleaf.compose.chart.ReadingsChart;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.ColourTable;
import org.benchleaf.compose.part.DataTable;
import org.benchleaf.compose.part.Evidence;
import org.benchleaf.compose.part.PassageMaker;
import org.benchleaf.compose.part.ReadingsTables;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.StatedWords;
import org.benchleaf.compose.part.WorkingMaker;
import org.benchleaf.derive.figure.WorkedResult;
import org.benchleaf.model.Instrument;
import org.benchleaf.model.MeasuringConditions;
import org.benchleaf.model.Result;
import org.benchleaf.page.Block;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.KeyNumbers;
import org.benchleaf.page.LinkList;
import org.benchleaf.page.Meaning;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.page.Working;
import org.benchleaf.page.WorkingList;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.words.Words;

/** What the results page shows of one result: the numbers first, then what they mean, how they came about, the data. */
final class ResultSections implements Result.Kinds<List<Block>> {

    private final Sheet sheet;
    private final Words words;
    private final CaseDesk desk;
    private final WorkedResult worked;
    private final String id;

    ResultSections(Sheet sheet, CaseDesk desk, WorkedResult worked, String id) {
        this.sheet = sheet;
        this.words = sheet.words();
        this.desk = desk;
        this.worked = worked;
        this.id = id;
    }

    /** The section of the result. */
    Section make() {
        List<Block> blocks = new ArrayList<>(worked.source().ask(this));
        desk.treatment().sources().of(worked.source()).ifPresent(passage -> blocks.add(new Facts(List.of(
                new Fact(words.say("results.source"), new PassageMaker(sheet).make(passage))))));
        if (!evidence().reaches().isEmpty()) {
            blocks.add(new LinkList(List.of(new LinkList.Entry(sheet.link(words.say("results.other-cases", "measure",
                    words.measure(worked.source().measure())), Paths.evidenceOf(worked.source().measure().word())), ""))));
        }
        return new Section(anchor(), Words.capital(words.measure(worked.source().measure())), Optional.empty(),
                blocks);
    }

    private String anchor() {
        return "section-" + id;
    }

    /** The result as those of other cases are compared with it. */
    Evidence evidence() {
        String file = tables().isEmpty() ? desk.clearance().allows(Clearance.Output.FIGURES) ? "figures.json" : ""
                : tables().get(0).file();
        return new EvidenceMaker(sheet, worked, id, desk.path("results.html") + "#" + anchor(),
                file.isEmpty() || !desk.clearance().allows(Clearance.Output.DATA) ? "" : desk.path(file)).make();
    }

    /** The tables of the result, each of which is a file too. */
    List<DataTable> tables() {
        Result source = worked.source();
        if (source instanceof Result.Readings readings) {
            ReadingsTables tables = new ReadingsTables(sheet, id, readings, worked);
            return Stream.concat(Stream.of(tables.readings()), tables.statistics().stream()).toList();
        }
        if (source instanceof Result.Colour colour) {
            return List.of(new ColourTable(sheet, id, colour, worked).data());
        }
        if (source instanceof Result.Stated stated) {
            return List.of(asStated(stated));
        }
        return source instanceof Result.Size size ? List.of(size(sheet, id, size)) : List.of();
    }

    /** What a report states, in its words: a program gets no number that nobody read. */
    private DataTable asStated(Result.Stated result) {
        StatedWords told = new StatedWords(sheet.words(), sheet.numbers(), result.unit());
        return new DataTable(id, words.say("results.stated-caption", "measure", words.measure(result.measure())), List.of(
                DataTable.Column.words(words.say("results.before"), "before, as given"),
                DataTable.Column.words(words.say("results.after"), "after, as given"),
                DataTable.Column.words(words.say("results.method"), "method")), List.of(List.of(
                DataTable.Cell.words(told.of(result.before())), DataTable.Cell.words(told.of(result.after())),
                DataTable.Cell.words(words.told(result.method())))));
    }

    private static DataTable size(Sheet sheet, String id, Result.Size result) {
        Words words = sheet.words();
        return new DataTable(id, words.say("results.size-caption", "method", result.method()), List.of(
                DataTable.Column.words(words.say("results.side"), "side"),
                new DataTable.Column(words.say("results.before"), "before", "mm", true),
                new DataTable.Column(words.say("results.after"), "after", "mm", true)), List.of(
                List.of(DataTable.Cell.words(words.say("results.height")), length(sheet, result.heightBefore()),
                        length(sheet, result.heightAfter())),
                List.of(DataTable.Cell.words(words.say("results.width")), length(sheet, result.widthBefore()),
                        length(sheet, result.widthAfter()))));
    }

    private static DataTable.Cell length(Sheet sheet, Quantity length) {
        return DataTable.Cell.number(sheet.numbers().fixed(length.in(org.benchleaf.quantity.Unit.MILLIMETRE), 1));
    }

    @Override
    public List<Block> readings(Result.Readings result) {
        List<Block> blocks = headed();
        ReadingsTables tables = new ReadingsTables(sheet, id, result, worked);
        List<Table> shown = shown();
        new ReadingsChart(sheet, id, result, tables).chart(shown).ifPresentOrElse(blocks::add,
                () -> blocks.addAll(shown));
        List<Fact> facts = new ArrayList<>();
        facts.addAll(read(result.method(), result.conditions()));
        instrument(result.instrument()).ifPresent(facts::add);
        result.equilibrated().ifPresent(time -> facts.add(fact("rested", sheet.numbers().written(time).text())));
        result.note().ifPresent(note -> facts.add(fact("note", note)));
        return ended(blocks, facts);
    }

    /** How the numbers were read, before and after where that differs. */
    private List<Fact> read(String method, MeasuringConditions conditions) {
        List<Fact> facts = new ArrayList<>();
        facts.add(fact("method", words.told(method)));
        conditions.methodAfter().ifPresent(after -> facts.add(fact("method-after", words.told(after))));
        conditions.aged().ifPresent(aged -> facts.add(fact("aged", words.told(aged))));
        return facts;
    }

    @Override
    public List<Block> stated(Result.Stated result) {
        StatedWords stated = new StatedWords(sheet.words(), sheet.numbers(), result.unit());
        List<Fact> facts = new ArrayList<>(List.of(fact("before", stated.of(result.before())),
                fact("after", stated.of(result.after()))));
        facts.addAll(read(result.method(), result.conditions()));
        instrument(result.instrument()).ifPresent(facts::add);
        result.equilibrated().ifPresent(time -> facts.add(fact("rested", sheet.numbers().written(time).text())));
        result.note().ifPresent(note -> facts.add(fact("note", note)));
        return ended(headed(), facts);
    }

    @Override
    public List<Block> colour(Result.Colour result) {
        List<Block> blocks = headed();
        List<Table> shown = shown();
        new ColourChart(sheet, id, result, new ColourTable(sheet, id, result, worked)).chart(shown)
                .ifPresentOrElse(blocks::add, () -> blocks.addAll(shown));
        List<Fact> facts = new ArrayList<>();
        String unknown = words.say("results.not-stated");
        facts.add(fact("formula", result.formula().orElse("CIEDE2000")));
        facts.add(fact("light", words.say("results.light-and-observer", "light", result.illuminant().orElse(unknown),
                "observer", result.observer().orElse(unknown))));
        facts.add(fact("geometry", Stream.of(Optional.of(result.geometry().orElse(unknown)),
                result.aperture().map(aperture -> words.say("results.aperture", "size",
                        sheet.numbers().written(aperture).text())),
                result.readingsEach().map(each -> words.count("results.readings-each", each)))
                .flatMap(Optional::stream).reduce((one, other) -> words.list(List.of(one, other))).orElse(unknown)));
        instrument(result.instrument()).ifPresent(facts::add);
        result.equilibrated().ifPresent(time -> facts.add(fact("rested", sheet.numbers().written(time).text())));
        result.note().ifPresent(note -> facts.add(fact("note", note)));
        return ended(blocks, facts);
    }

    @Override
    public List<Block> size(Result.Size result) {
        List<Block> blocks = headed();
        blocks.addAll(shown());
        List<Fact> facts = new ArrayList<>(List.of(fact("method", result.method())));
        String unknown = words.say("results.not-stated");
        facts.add(fact("humidity", words.say("results.humidity-both",
                "before", result.humidityBefore().map(one -> sheet.numbers().written(one).text()).orElse(unknown),
                "after", result.humidityAfter().map(one -> sheet.numbers().written(one).text()).orElse(unknown))));
        result.note().ifPresent(note -> facts.add(fact("note", note)));
        return ended(blocks, facts);
    }

    @Override
    public List<Block> reserve(Result.Reserve result) {
        List<Fact> facts = new ArrayList<>();
        result.method().ifPresent(method -> facts.add(fact("method", method)));
        result.note().ifPresent(note -> facts.add(fact("note", note)));
        return ended(headed(), facts);
    }

    @Override
    public List<Block> words(Result.Words result) {
        List<Fact> facts = new ArrayList<>(List.of(fact("before", ResultNumbers.rank(words, result, result.before())),
                fact("after", ResultNumbers.rank(words, result, result.after()))));
        result.unit().filter(unit -> !unit.symbol().isEmpty()).ifPresent(unit -> facts.add(fact("unit", unit.symbol())));
        facts.addAll(read(result.method(), result.conditions()));
        instrument(result.instrument()).ifPresent(facts::add);
        result.equilibrated().ifPresent(time -> facts.add(fact("rested", sheet.numbers().written(time).text())));
        result.note().ifPresent(note -> facts.add(fact("note", note)));
        return ended(new ArrayList<>(), facts);
    }

    @Override
    public List<Block> notMeasured(Result.NotMeasured result) {
        return List.of(new Facts(List.of(fact("not-measured", result.because()))));
    }

    /** The one or two numbers that sum the result up. */
    private List<Block> headed() {
        List<KeyNumbers.Item> items = ResultNumbers.whole(worked).stream().map(worked.figures()::get)
                .flatMap(figure -> Optional.ofNullable(figure).stream())
                .map(figure -> new KeyNumbers.Item(new WorkingMaker(sheet).make(figure), ResultNumbers.measured(sheet,
                        worked.source()), List.of())).toList();
        return new ArrayList<>(items.isEmpty() ? List.of() : List.of(new KeyNumbers(items)));
    }

    /** Below the numbers: what they mean, how they were read, and the working of each. */
    private List<Block> ended(List<Block> blocks, List<Fact> facts) {
        Meaning meaning = new ResultMeaning(sheet, worked).make();
        if (!meaning.says().isEmpty() || !meaning.limits().isEmpty()) {
            blocks.add(meaning);
        }
        List<Fact> all = new ArrayList<>(facts);
        List<String> days = days();
        if (!days.isEmpty()) {
            all.add(fact("read-on", words.list(days)));
        }
        blocks.add(new Facts(all));
        List<Working> workings = worked.figures().values().stream().filter(figure -> !sheet.shows(figure.id()))
                .map(new WorkingMaker(sheet)::make).toList();
        if (!workings.isEmpty()) {
            blocks.add(new WorkingList(words.say("results.workings", "measure",
                    words.measure(worked.source().measure())), workings));
        }
        return blocks;
    }

    /** When it was read, as far as the case tells it. */
    private List<String> days() {
        return desk.treatment().readDays(worked.source()).stream()
                .map(day -> words.say(day.before() ? "results.read-before" : "results.read-after", "day",
                        day.day().span().map(sheet.numbers()::span).orElseGet(() -> sheet.numbers().date(day.day().first())))).toList();
    }

    private List<Table> shown() {
        return tables().stream().map(table -> table.table(desk.file(sheet, table))).toList();
    }

    private Optional<Fact> instrument(Optional<String> wanted) {
        return wanted.flatMap(one -> desk.treatment().instruments().stream()
                .filter(instrument -> instrument.id().equals(one)).findFirst()).map(this::instrument);
    }

    private Fact instrument(Instrument instrument) {
        return fact("instrument", instrument.is() + (instrument.calibrated().isEmpty() ? ""
                : words.say("results.calibrated", "days", words.list(
                        instrument.calibrated().stream().map(sheet.numbers()::date).toList()))));
    }

    private Fact fact(String key, String value) {
        return new Fact(words.say("results." + key), sheet.linked(value));
    }
}
