package org.benchleaf.compose.bench;

import java.util.List;
import java.util.stream.IntStream;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.HazardMaker;
import org.benchleaf.compose.part.PartFacts;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.model.SpotTest;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.page.Fact;

/** How long each drop of a testing step stands on what: a hand has the table of the tests on another screen. */
final class BenchDrops {

    private final Sheet sheet;
    private final CaseDesk desk;
    private final List<Step> steps;

    BenchDrops(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
        this.steps = desk.treatment().steps();
    }

    /** What is tested with what, and how long; nothing where the step tests nothing, or no time is known. */
    List<Fact> of(Step step) {
        int here = steps.indexOf(step);
        int earlier = IntStream.range(0, here).filter(i -> steps.get(i).kind() == StepKind.TESTING).max().orElse(-1);
        return step.kind() != StepKind.TESTING ? List.of() : desk.treatment().tests().stream().filter(SpotTest::isLiquidNamed)
                .filter(test -> after(test) < here && (test.after().isPresent() ? after(test) > earlier : earlier < 0))
                .flatMap(test -> test.dwell().stream().map(dwell -> Fact.of(sheet.words().more(PartFacts.tested(sheet.words(), desk, test),
                        new HazardMaker(sheet, desk).name(test.with())), sheet.numbers().duration(dwell).text())))
                .toList();
    }

    /** The place of the step after which it was done; before all steps where it was done on the untouched sheet. */
    private int after(SpotTest test) {
        return test.after().flatMap(desk.treatment()::step).map(steps::indexOf).orElse(-1);
    }
}
