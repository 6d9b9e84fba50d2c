package org.benchleaf.compose.classes;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.compose.part.HazardMaker;
import org.benchleaf.compose.part.PartFacts;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.Calibration;
import org.benchleaf.derive.classes.Duty;
import org.benchleaf.derive.classes.Outlasting;
import org.benchleaf.model.SpotTest;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.page.Block;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** What the technician writes down before a class: what the trial of each practice sheet showed, and each calibration. */
record PreparationForms(Sheet sheet, ClassDesk desk) {

    /** The forms; empty where a class has neither a trial nor a meter. */
    Optional<Section> section() {
        Optional<Table> trial = trial();
        List<Block> forms = Stream.of(trial.stream(), trial.stream().flatMap(any -> new Untested(sheet, desk).ofClass().stream()),
                calibrations().stream()).flatMap(each -> each).map(Block.class::cast).toList();
        return forms.isEmpty() ? Optional.empty() : Optional.of(new Section("written-down", sheet.words().say("record-form.heading"),
                Optional.of(sheet.words().say("class.write-in")), forms));
    }

    /** A row for each practice sheet, a column for each test that the case asks of what the sheets went through. */
    private Optional<Table> trial() {
        Words words = sheet.words();
        Optional<Duty> duty = desk.plan().duties().stream().filter(one -> one.kind() == Duty.Kind.SHEETS_GO_THROUGH)
                .filter(one -> one.step().flatMap(desk.desk().treatment()::step).map(Step::kind).filter(StepKind.TESTING::equals)
                        .isPresent()).findFirst();
        List<String> tests = tests().map(this::asked).toList();
        if (duty.isEmpty() || tests.isEmpty()) {
            return Optional.empty();
        }
        List<Table.Column> columns = new ArrayList<>(words.columns("class.trial-sheet", "class.trial-times"));
        tests.forEach(test -> columns.add(new Table.Column(test, false)));
        columns.addAll(words.columns("class.trial-may-go", "class.sign"));
        List<List<RichText>> rows = new ArrayList<>();
        for (int number = 1; number <= duty.get().count(); number++) {
            List<RichText> cells = new ArrayList<>(row(String.valueOf(number), columns.size() - 2));
            cells.add(1, RichText.of(times(duty.get(), number)));
            rows.add(cells);
        }
        return Optional.of(new Table("trial-record", words.say("class.trial-record"), columns, rows, Optional.empty()));
    }

    /** When the first drop is set, each is blotted and the next set, and the last is blotted. */
    private String times(Duty duty, int number) {
        return sheet.words().list(duty.touches().stream().skip(number - 1L).limit(1).flatMap(List::stream).map(time ->
                duty.touches().get(number - 1).indexOf(time) == 0 ? desk.clock(sheet, time) : sheet.numbers().clock(time.toLocalTime()))
                .toList());
    }

    /** What the case asks of what the sheets went through, and what the plan keeps wet for longer than was tested. */
    private Stream<SpotTest> tests() {
        Set<String> through = new Duties(sheet, desk).steps().keySet();
        List<SpotTest> asked = desk.desk().treatment().tests().stream().filter(test ->
                test.after().filter(through::contains).isPresent()).toList();
        return Stream.concat(asked.stream(), desk.plan().outlasting().stream().map(one -> one.contact().test()).distinct()
                .filter(test -> asked.stream().anyMatch(one -> one.with().equals(test.with())) && asked.stream().noneMatch(one ->
                        one.with().equals(test.with()) && one.medium().equals(test.medium()))));
    }

    private String asked(SpotTest test) {
        return sheet.words().say("class.trial-medium", "medium", PartFacts.tested(sheet.words(), desk.desk(), test),
                "liquid", new HazardMaker(sheet, desk.desk()).name(test.with()),
                "dwell", Outlasting.longest(desk.plan().outlasting(), test.with()).or(test::dwell)
                        .map(dwell -> sheet.numbers().duration(dwell).text()).orElse(sheet.words().say("class.not-stated")));
    }

    /** A row for each meter on each day, by the time at which the plan has it calibrated. */
    private Optional<Table> calibrations() {
        Words words = sheet.words();
        Set<LocalDateTime> checks = MeterWork.checks(sheet, desk).stream().map(MeterWork.Check::begin).collect(Collectors.toSet());
        List<LocalDateTime> times = Stream.of(desk.plan().duties().stream().filter(duty -> duty.kind() == Duty.Kind.METER_CALIBRATED)
                .map(Duty::begin), MeterWork.of(sheet, desk).stream().map(Calibration::begin), checks.stream()).flatMap(each -> each)
                .sorted().toList();
        List<Table.Column> columns = new ArrayList<>(words.columns("class.calibration-at", "class.calibration-meter"));
        columns.add(new Table.Column(words.say("class.calibration-buffer", "buffer", MeterWork.buffers(sheet, desk)), false));
        columns.addAll(words.columns("class.calibration-temperature", "class.calibration-slope", "class.calibration-passed", "class.sign"));
        List<List<RichText>> rows = times.stream().map(time -> {
            List<RichText> cells = row(desk.moment(sheet, time), columns.size() - 1);
            if (checks.contains(time)) {
                cells.set(1, RichText.of(words.say("class.conductivity-meter")));
            }
            return cells;
        }).toList();
        return rows.isEmpty() ? Optional.empty() : Optional.of(new Table("calibration-record", words.say("class.calibration-record"),
                columns, rows, Optional.empty()));
    }

    private List<RichText> row(String first, int empty) {
        List<RichText> cells = new ArrayList<>(List.of(RichText.of(first)));
        cells.addAll(Collections.nCopies(empty, RichText.of(sheet.words().say("class.line"))));
        return cells;
    }
}
