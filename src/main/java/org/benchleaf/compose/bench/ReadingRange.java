package org.benchleaf.compose.bench;

import java.util.Map;
import java.util.Optional;
import org.benchleaf.calculate.Figure;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.RecipeMaker;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.model.Part;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
import org.benchleaf.page.BenchScreen;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Between what the sheet gives a reading; nothing where it gives one number alone, which no other sheet of paper meets. */
final class ReadingRange {

    /** The figure of a step in which each weight that is written down should lie. */
    private static final Map<String, String> WEIGHTS = Map.of("wet", "wet-mass", "restrained", "restraint-mass");

    private final Sheet sheet;
    private final CaseDesk desk;

    ReadingRange(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
    }

    /** The range of a note; a fresh bath has the pH to which it is brought, of which a used one has nothing to tell. */
    Optional<BenchScreen.Range> of(Step step, BenchScreen.Note note) {
        return note.key().equals("pH fresh") ? step.part(Part.Bath.class).flatMap(bath -> desk.treatment().solution(bath.of()))
                .map(Solution::recipe).filter(Recipe.Adjust.class::isInstance).map(Recipe.Adjust.class::cast).flatMap(this::fresh)
                : Optional.ofNullable(WEIGHTS.get(note.key())).flatMap(name -> sheet.figure(step.id() + "." + name))
                        .filter(figure -> figure.value().spread() == Quantity.Spread.RANGE).map(this::weight);
    }

    /** What the colour of a used bath is held against: the same bath of the case, and when the step is enough. */
    static Optional<BenchScreen.Sight> sight(Step step, BenchScreen.Note note) {
        return step.until().filter(any -> note.bath() > 0 && note.key().equals("colour")).map(until -> new BenchScreen.Sight(
                step.part(Part.Bath.class).flatMap(bath -> bath.readings().stream().filter(reading -> reading.bath() == note.bath())
                        .findFirst()).flatMap(Part.BathReading::colour), until));
    }

    private Optional<BenchScreen.Range> fresh(Recipe.Adjust adjust) {
        RecipeMaker recipes = new RecipeMaker(sheet, desk);
        return recipes.window(adjust).map(window -> range(window, Unit.PH, recipes.byTheMeter("bench-note.ph-range", adjust)));
    }

    private BenchScreen.Range weight(Figure figure) {
        return range(figure.value(), Unit.GRAM, sheet.amount(figure).text());
    }

    private static BenchScreen.Range range(Quantity between, Unit unit, String text) {
        return new BenchScreen.Range(between.lowIn(unit), between.highIn(unit), text);
    }
}
