package org.benchleaf.compose.chart;

import java.util.Optional;
import org.benchleaf.compose.part.BenchAmount;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.HazardMaker;
import org.benchleaf.compose.part.PartFacts;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.model.Step;
import org.benchleaf.page.Paths;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.words.Words;

/** What the drawings of a step ask of its case: names and figures as the sheet's words tell them. */
record DrawnStep(Sheet sheet, CaseDesk desk, Step step) {

    Words words() {
        return sheet.words();
    }

    String id(String kind) {
        return Paths.step(step.id()) + "-" + kind;
    }

    /** What the case calls a liquid or a material. */
    String named(String id) {
        return new HazardMaker(sheet, desk).name(id);
    }

    /** A medium as one points at it. */
    String medium(String id) {
        return PartFacts.medium(sheet.words(), desk, id);
    }

    String written(Quantity quantity) {
        return sheet.numbers().written(quantity).text();
    }

    String time(Quantity quantity) {
        return sheet.numbers().duration(quantity).text();
    }

    /** The liquid of one bath. */
    Optional<String> volume() {
        return new BenchAmount(sheet, desk, step).volume();
    }

    static double millimetres(Quantity length) {
        return length.in(Unit.MILLIMETRE);
    }
}
