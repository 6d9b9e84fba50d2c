package org.benchleaf.compose.cases;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.CasePageName;
import org.benchleaf.compose.part.HazardMaker;
import org.benchleaf.compose.part.PartFacts;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.SpotTest;
import org.benchleaf.model.TestResult;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.text.RichText;
import org.benchleaf.words.StepTitle;
import org.benchleaf.words.Words;

/** The spot tests of a case by medium and liquid: on its step sheet, else among its results. */
final class SpotTestTable {

    private final Sheet sheet;
    private final CaseDesk desk;
    private final Words words;

    SpotTestTable(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
        this.words = sheet.words();
    }

    /** For those who work by them; empty where nothing was tested. */
    Optional<Section> atTheBench() {
        return section("bench.tests-lead");
    }

    /** For those who read of the treatment, where the case has no step sheet that tells them. */
    Optional<Section> onRecord() {
        return desk.has(CasePageName.STEP_SHEET) ? Optional.empty() : section("results.tests-lead");
    }

    private Optional<Section> section(String lead) {
        List<List<RichText>> rows = desk.treatment().tests().stream().map(this::row).toList();
        return rows.isEmpty() ? Optional.empty() : Optional.of(new Section("tests", words.say("bench.tests"), Optional.of(words.say(lead)),
                List.of(new Table("spot-tests", words.say("bench.tests-caption"), words.columns("bench.tests-of", "bench.tests-with",
                        "bench.tests-dwell", "bench.tests-result"), rows, Optional.empty()))));
    }

    private List<RichText> row(SpotTest test) {
        String with = new HazardMaker(sheet, desk).name(test.with())
                + test.after().flatMap(desk.treatment()::step).map(step -> words.say("bench.tests-after",
                        "step", new StepTitle(words, desk.treatment()).kind(step).toLowerCase(Locale.ROOT))).orElse("");
        return List.of(sheet.linked(PartFacts.tested(words, desk, test)), RichText.of(with),
                RichText.of(test.dwell().map(dwell -> sheet.numbers().duration(dwell).text()).orElse(words.notRecorded())),
                sheet.linked(result(test.result()) + test.note().map(note -> ": " + note).orElse("")));
    }

    /** In the words of the author; in those of the closed list where the page is in another language. */
    private String result(TestResult result) {
        Optional<MissingValue> missing = MissingValue.read(result.written());
        if (missing.isPresent()) {
            return words.missing(missing.get());
        }
        return desk.folder().language().isEmpty() ? result.written() : words.term("test-result", result.word());
    }
}
