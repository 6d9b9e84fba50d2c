package org.benchleaf.compose.bench;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.benchleaf.calculate.Figure;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.HazardMaker;
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

    /**
     * The range of a note. A fresh bath has the pH to which it is brought; a used one lies between the lowest that was read in the
     * case and that of a fresh one; what is added, between what pure water takes and what the bath takes at most.
     */
    Optional<BenchScreen.Range> of(Step step, BenchScreen.Note note) {
        return switch (note.key()) {
            case "pH fresh" -> adjusted(step).flatMap(this::fresh);
            case "pH used" -> adjusted(step).flatMap(recipe -> used(step, recipe));
            case "added" -> step.part(Part.Bath.class).flatMap(bath -> dose(bath.of()));
            default -> weighed(step, note);
        };
    }

    private Optional<BenchScreen.Range> weighed(Step step, BenchScreen.Note note) {
        return Optional.ofNullable(WEIGHTS.get(note.key())).flatMap(name -> sheet.figure(step.id() + "." + name))
                        .filter(figure -> figure.value().spread() == Quantity.Spread.RANGE).map(this::weight);
    }

    /** What is added to a bath that is brought to a pH, by its name; empty for any other note. */
    Optional<String> added(Step step, BenchScreen.Note note) {
        return adjusted(step).filter(any -> note.key().equals("added")).map(recipe -> sheet.words().say("baths.added-of", "stock",
                new HazardMaker(sheet, desk).name(recipe.with())));
    }

    private Optional<Recipe.Adjust> adjusted(Step step) {
        return step.part(Part.Bath.class).flatMap(bath -> desk.treatment().solution(bath.of())).map(Solution::recipe)
                .filter(Recipe.Adjust.class::isInstance).map(Recipe.Adjust.class::cast);
    }

    private Optional<BenchScreen.Range> used(Step step, Recipe.Adjust recipe) {
        OptionalDouble lowest = step.part(Part.Bath.class).stream().flatMap(bath -> bath.readings().stream())
                .flatMap(reading -> reading.phUsed().stream()).mapToDouble(read -> read.in(Unit.PH)).min();
        return lowest.isEmpty() ? Optional.empty() : new RecipeMaker(sheet, desk).window(recipe)
                .filter(window -> window.highIn(Unit.PH) > lowest.getAsDouble())
                .map(window -> Quantity.range(lowest.getAsDouble(), window.highIn(Unit.PH), Unit.PH))
                .map(window -> range(window, Unit.PH, sheet.words().say("bench-note.ph-range", "ph",
                        sheet.numbers().between(window, 1).text())));
    }

    /** The two doses, as the sheet tells each. */
    private Optional<BenchScreen.Range> dose(String solution) {
        return sheet.figure(solution + ".dose").flatMap(least -> sheet.figure(solution + ".dose-ceiling").map(most ->
                new BenchScreen.Range(least.value().lowIn(Unit.MILLILITRE), most.value().highIn(Unit.MILLILITRE),
                        sheet.amount(least).text() + "–" + sheet.amount(most).text())));
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
