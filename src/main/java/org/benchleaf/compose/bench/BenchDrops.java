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
import org.benchleaf.quantity.Quantity;

/** What is set on what in a testing step, and how long it stays there: each has its own time. */
final class BenchDrops {

    private final Sheet sheet;
    private final CaseDesk desk;
    private final List<Step> steps;

    BenchDrops(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
        this.steps = desk.treatment().steps();
    }

    /**
     * One drop, or whatever else is set on the sheet.
     *
     * @param with the liquid or indicator, in words
     * @param on the medium, in words
     * @param dwell how long it stays
     */
    record Drop(String with, String on, Quantity dwell) {
    }

    /** What is tested with what, and how long, those of one liquid together; nothing where the step tests nothing, or no time is known. */
    List<Drop> of(Step step) {
        int here = steps.indexOf(step);
        int earlier = IntStream.range(0, here).filter(i -> steps.get(i).kind() == StepKind.TESTING).max().orElse(-1);
        List<Drop> drops = step.kind() != StepKind.TESTING ? List.of() : desk.treatment().tests().stream().filter(SpotTest::isLiquidNamed)
                .filter(test -> after(test) < here && (test.after().isPresent() ? after(test) > earlier : earlier < 0))
                .flatMap(test -> test.dwell().stream().map(dwell -> new Drop(new HazardMaker(sheet, desk).name(test.with()),
                        PartFacts.tested(sheet.words(), desk, test), dwell)))
                .toList();
        return drops.stream().map(Drop::with).distinct()
                .flatMap(with -> drops.stream().filter(drop -> drop.with().equals(with))).toList();
    }

    /** The place of the step after which it was done; before all steps where it was done on the untouched sheet. */
    private int after(SpotTest test) {
        return test.after().flatMap(desk.treatment()::step).map(steps::indexOf).orElse(-1);
    }
}
