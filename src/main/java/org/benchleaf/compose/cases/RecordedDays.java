package org.benchleaf.compose.cases;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.time.DayOnRecord;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.page.Block;
import org.benchleaf.page.Prose;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
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
        boolean several = days.size() >= FEWEST;
        if (several) {
            told.add(whole());
        }
        desk.treatment().steps().forEach(step -> baths(step).ifPresent(told::add));
        if (told.isEmpty()) {
            return Optional.empty();
        }
        List<Block> blocks = new ArrayList<>(List.of(new Prose(told.stream().map(Prose.Passage::paragraph).toList())));
        if (several) {
            blocks.add(table());
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

    /** Told where the last bath that was read is not the last one planned. */
    Optional<String> baths(Step step) {
        return step.part(Part.Bath.class).flatMap(bath -> bath.readings().stream().mapToInt(Part.BathReading::bath).max().stream()
                .boxed().findFirst().filter(read -> read != bath.baths())
                .map(read -> words.say("record-days.baths", "step", new StepTitle(words, desk.treatment()).of(step),
                        "planned", words.count("record-days.bath", bath.baths()), "read", read)));
    }
}
