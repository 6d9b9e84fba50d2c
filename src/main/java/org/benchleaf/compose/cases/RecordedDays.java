package org.benchleaf.compose.cases;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.WorkingMaker;
import org.benchleaf.derive.time.DayOnRecord;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.Block;
import org.benchleaf.page.Prose;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.page.Working;
import org.benchleaf.page.WorkingList;
import org.benchleaf.text.RichText;
import org.benchleaf.words.StepTitle;
import org.benchleaf.words.Words;

/** The record beside the plan: the days of the steps, the length of the whole and the number of baths, with their differences in words. */
final class RecordedDays {

    private static final int FEWEST = 2;

    private final Sheet sheet;
    private final CaseDesk desk;
    private final Words words;
    private final List<DayOnRecord> days;

    RecordedDays(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
        this.words = sheet.words();
        this.days = desk.worked().daysOnRecord();
    }

    /** The section; empty where nothing on record can be held against a plan. */
    Optional<Section> section() {
        List<String> told = new ArrayList<>();
        boolean several = days.size() >= FEWEST && areAllDays(desk.treatment());
        if (several) {
            told.add(whole());
            wait(desk.treatment()).ifPresent(told::add);
        }
        desk.treatment().steps().forEach(step -> bathsWithWater(step).ifPresent(told::add));
        if (told.isEmpty()) {
            return Optional.empty();
        }
        List<Block> blocks = new ArrayList<>(List.of(new Prose(told.stream().map(Prose.Passage::paragraph).toList())));
        if (several) {
            blocks.add(table());
        }
        List<Working> workings = workings();
        if (!workings.isEmpty()) {
            blocks.add(new WorkingList(words.say("baths.workings"), workings));
        }
        return Optional.of(new Section("record", words.say("record-days.heading"), Optional.of(words.say("record-days.lead")), blocks));
    }

    /** From the first day on record to the last. */
    private String whole() {
        DayOnRecord last = days.stream().max(Comparator.comparing(DayOnRecord::on)).orElseThrow();
        LocalDate first = first();
        String took = count(first, last.on());
        return last.planned().map(plan -> words.say("record-days.whole", "planned", plan.earliest().equals(plan.latest())
                        ? count(first, plan.latest()) : words.say("record-days.between", "low", span(first, plan.earliest()),
                                "high", count(first, plan.latest())), "took", took))
                .orElseGet(() -> words.say("record-days.whole-without-plan", "took", took));
    }

    /** How many days there are from one to another, both counted. */
    private static int span(LocalDate first, LocalDate last) {
        return (int) (last.toEpochDay() - first.toEpochDay()) + 1;
    }

    private String count(LocalDate first, LocalDate last) {
        return count(words, first, last);
    }

    /** How many days there are from one to another, both counted, in words. */
    static String count(Words words, LocalDate first, LocalDate last) {
        return words.count("record-days.days", span(first, last));
    }

    private Table table() {
        return new Table("days-on-record", words.say("record-days.caption"), List.of(new Table.Column(words.say("record-days.step"), false),
                new Table.Column(words.say("record-days.planned"), false), new Table.Column(words.say("record-days.on-record"), false),
                new Table.Column(words.say("record-days.difference"), false)), days.stream().map(this::row).toList(), Optional.empty());
    }

    private List<RichText> row(DayOnRecord day) {
        String step = desk.treatment().step(day.step()).map(new StepTitle(words, desk.treatment())::of).orElse(day.step());
        String planned = day.planned().map(plan -> plan.earliest().equals(plan.latest()) ? number(plan.earliest())
                : words.say("record-days.from-to", "from", number(plan.earliest()), "to", number(plan.latest())))
                .orElseGet(() -> words.say("record-days.no-plan"));
        String onRecord = words.say("record-days.dated", "day", number(day.on()), "date", sheet.numbers().date(day.on()));
        return List.of(RichText.of(step), RichText.of(planned), RichText.of(onRecord),
                RichText.of(day.daysLater().map(this::difference).orElseGet(() -> words.say("record-days.cannot-be-told"))));
    }

    /** A day by its number: a date of the plan would look like one that somebody wrote down. */
    private String number(LocalDate day) {
        return words.say("record-days.day", "n", span(first(), day));
    }

    private LocalDate first() {
        return days.stream().map(DayOnRecord::on).min(LocalDate::compareTo).orElseThrow();
    }

    private String difference(long later) {
        return later == 0 ? words.say("record-days.as-planned")
                : words.count(later < 0 ? "record-days.earlier" : "record-days.later", (int) Math.abs(later));
    }

    /** Told where as many baths as are on record were not planned. */
    Optional<String> baths(Step step) {
        return baths(step, Optional.empty(), Optional.empty());
    }

    /** The same with the water of each, whose workings stand on this page. */
    private Optional<String> bathsWithWater(Step step) {
        return baths(step, waterPlanned(step), waterOnRecord(step));
    }

    private Optional<String> baths(Step step, Optional<Figure> planned, Optional<Figure> onRecord) {
        return step.part(Part.Bath.class).flatMap(bath -> bath.onRecord().filter(read -> read != bath.baths())
                .map(read -> words.say("record-days.baths", "step", title(step), "planned", withWater(bath.baths(), planned),
                        "read", withWater(read, onRecord))));
    }

    private String withWater(int baths, Optional<Figure> water) {
        String told = words.count("record-days.bath", baths);
        return water.map(figure -> words.say("record-days.with-water", "baths", told, "volume", sheet.amount(figure).text())).orElse(told);
    }

    private Optional<Figure> waterPlanned(Step step) {
        return figure(step, "tray-total").or(() -> figure(step, "total"));
    }

    private Optional<Figure> waterOnRecord(Step step) {
        return figure(step, "record-total");
    }

    private Optional<Figure> figure(Step step, String name) {
        return desk.worked().figures().values().stream().filter(figure -> figure.key().of().equals(step.id())
                && figure.key().owner() == FigureKey.Owner.STEP && figure.key().name().equals(name)).findFirst();
    }

    private List<Working> workings() {
        WorkingMaker maker = new WorkingMaker(sheet);
        return desk.treatment().steps().stream().filter(step -> baths(step).isPresent())
                .flatMap(step -> Stream.concat(waterOnRecord(step).stream(), waterPlanned(step).stream())).map(maker::make).toList();
    }

    /**
     * The time between two steps on record that is most of the whole, with the day by which what a step laid on was expected to be
     * gone, if it lies in that time; empty where no such time is most of it.
     */
    Optional<String> wait(TreatmentCase treatment) {
        if (!areAllDays(treatment)) {
            return Optional.empty();
        }
        List<Step> dated = treatment.steps().stream().filter(step -> step.on().isPresent())
                .sorted(Comparator.comparing(step -> step.on().get())).toList();
        return IntStream.range(1, dated.size()).boxed().max(Comparator.comparingInt(n -> between(dated, n)))
                .filter(n -> 2 * between(dated, n) > span(dated.get(0).on().get(), dated.get(dated.size() - 1).on().get()))
                .map(n -> wait(treatment, dated.get(n - 1), dated.get(n), between(dated, n)));
    }

    /** Whether no step is on record by its month or its year alone, which may lie before, between and after the days of others. */
    static boolean areAllDays(TreatmentCase treatment) {
        return treatment.steps().stream().allMatch(step -> step.within().isEmpty());
    }

    /** From when to when a step on record may have been done, in the words of those that begin first and end last. */
    String when() {
        List<Step> dated = desk.treatment().steps().stream().filter(step -> step.firstDay().isPresent()).toList();
        String first = when(dated.stream().min(Comparator.comparing(step -> step.firstDay().get())).orElseThrow());
        String last = when(dated.stream().max(Comparator.comparing(step -> step.lastDay().get())).orElseThrow());
        return first.equals(last) ? first : words.say("study.time-span", "from", first, "to", last);
    }

    private String when(Step step) {
        return step.on().map(sheet.numbers()::date).or(() -> step.within().map(sheet.numbers()::span)).orElseThrow();
    }

    /** The days between a step and the one before it, neither day counted. */
    private static int between(List<Step> dated, int n) {
        return span(dated.get(n - 1).on().get(), dated.get(n).on().get()) - 2;
    }

    private String wait(TreatmentCase treatment, Step before, Step after, int days) {
        LocalDate from = before.on().get();
        LocalDate to = after.on().get();
        String told = words.say("record-days.wait", "days", words.count("record-days.days", days),
                "before", title(before), "from", sheet.numbers().date(from),
                "after", title(after), "to", sheet.numbers().date(to));
        return treatment.steps().stream().flatMap(step -> step.part(Part.Fixing.class).flatMap(Part.Fixing::clearBy)
                        .filter(day -> day.isAfter(from) && !day.isAfter(to)).map(day -> words.say("record-days.wait-for",
                                "step", title(step), "day", sheet.numbers().date(day))).stream())
                .reduce(told, (all, one) -> all + " " + one);
    }

    private String title(Step step) {
        return new StepTitle(words, desk.treatment()).of(step);
    }
}
