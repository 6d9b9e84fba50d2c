package org.benchleaf.derive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.message.FigureMessages;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Solution;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Works out how much of each solution to make, from what uses it, and what to measure out for it. */
final class Preparations {

    /**
     * Liquids may lose so much volume when they are joined; common practice, no source. Ethanol and water, which shrink
     * more than most, lose 3.6 % (OIML R 22).
     */
    private static final double SHRINKING = 1.05;
    private static final String HEAVIEST = "A volume is taken to weigh as much as the heaviest of the liquids, and 5 %"
            + " more because the mixture may shrink.";

    private final Bench bench;
    private final Strengths strengths;
    private final MeasureChoice measuring;
    private final Map<String, Minutes> stepTimes;

    /**
     * Makes ready to work.
     *
     * @param stepTimes how long each step takes, by id, to see whether a solution keeps that long
     */
    Preparations(Bench bench, Map<String, Minutes> stepTimes) {
        this.bench = bench;
        this.strengths = new Strengths(bench);
        this.measuring = new MeasureChoice(bench.library().studio(), bench.tolerances());
        this.stepTimes = stepTimes;
    }

    /** What to make, users before what they use. */
    List<Preparation> make() {
        Map<String, List<String>> usedBy = usedBy();
        tellCircles(usedBy);
        List<Preparation> made = new ArrayList<>();
        for (String id : CriticalPath.order(usedBy)) {
            bench.source().solution(id).flatMap(this::prepare).ifPresent(made::add);
        }
        return made;
    }

    private Map<String, List<String>> usedBy() {
        Map<String, List<String>> usedBy = new LinkedHashMap<>();
        bench.source().solutions().forEach(solution -> usedBy.put(solution.id(), new ArrayList<>()));
        for (Solution user : bench.source().solutions()) {
            for (String of : user.recipe().ingredients()) {
                if (usedBy.containsKey(of)) {
                    usedBy.get(of).add(user.id());
                }
            }
        }
        return usedBy;
    }

    private void tellCircles(Map<String, List<String>> usedBy) {
        Set<String> circle = CriticalPath.circle(usedBy);
        circle.stream().findFirst().flatMap(bench.source()::solution).ifPresent(first ->
                bench.messages().add(FigureMessages.SOLUTIONS_IN_A_CIRCLE.at(first.place(), "solution", first.id(),
                        "circle", String.join(", ", circle))));
    }

    private Optional<Preparation> prepare(Solution solution) {
        Optional<Figure> needed = needed(solution);
        int batches = batches(solution);
        Optional<Figure> batch = batch(solution, needed, batches);
        if (batch.isEmpty()) {
            tellNoBatch(solution);
            return Optional.empty();
        }
        Set<String> before = bench.ledger().ids();
        List<Preparation.Measure> measures = new ArrayList<>();
        for (RecipeFigures.Ingredient ingredient : solution.recipe()
                .ask(new RecipeFigures(bench, solution, batch.get()))) {
            bench.uses().add(new Uses.Use(ingredient.of(), solution.id(), false, ingredient.figure(), batches, 1));
            measures.add(measure(solution, ingredient));
        }
        Set<String> figures = bench.ledger().ids();
        figures.removeAll(before);
        needed.ifPresent(figure -> figures.add(figure.id()));
        figures.add(batch.get().id());
        return Optional.of(new Preparation(solution.id(), needed.orElse(batch.get()).value(), batch.get().value(),
                batches, measures, solution.readyIn(), solution.handsOn(), solution.keeps(), usedIn(solution.id(),
                        new LinkedHashSet<>()), List.copyOf(figures)));
    }

    private void tellNoBatch(Solution solution) {
        Optional<String> why = Optional.of(heaviest(solution).why()).filter(text -> countsMass(solution)
                && !text.isEmpty() && !(bench.uses().of(solution.id()).isEmpty() && solution.make().isEmpty()));
        bench.messages().add(why.map(text -> FigureMessages.NO_DENSITY.at(solution.place(), "solution", solution.id(),
                "why", text)).orElseGet(() -> FigureMessages.NOTHING_TO_MAKE.at(solution.place(),
                        "solution", solution.id())));
    }

    /** The steps that use it, directly or through other solutions. */
    private List<String> usedIn(String id, Set<String> steps) {
        for (Uses.Use use : bench.uses().of(id)) {
            if (use.step()) {
                steps.add(use.by());
            } else {
                usedIn(use.by(), steps);
            }
        }
        return List.copyOf(steps);
    }

    private Optional<Figure> needed(Solution solution) {
        List<Uses.Use> uses = bench.uses().of(solution.id());
        if (uses.isEmpty()) {
            return Optional.empty();
        }
        Dimension kind = byMass(solution.recipe()) ? Dimension.MASS : Dimension.VOLUME;
        List<Quantity> amounts = new ArrayList<>();
        List<Figure.Given> givens = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (Uses.Use use : uses) {
            Quantity amount = use.figure().value();
            Optional<Quantity> same = asKind(amount, kind, solution);
            if (same.isEmpty()) {
                return Optional.empty();
            }
            if (amount.dimension() != kind) {
                notes.add(countsMass(solution) ? HEAVIEST : "One millilitre is taken to weigh one gram.");
            }
            amounts.add(Amounts.times(same.get(), use.times()));
            givens.add(given(use));
        }
        return Optional.of(bench.ledger().put(solution.id() + ".needed", "used in all", Amounts.readable(
                Amounts.sum(amounts)), "sum", givens, notes.stream().distinct().toArray(String[]::new)));
    }

    static Figure.Given given(Uses.Use use) {
        Figure.Given plain = Ledger.given(use.figure());
        return use.times() == 1 ? plain : new Figure.Given(plain.key(), plain.label(),
                plain.text() + " × " + Reading.number(use.times()), plain.from());
    }

    /** A mixture by mass gives a volume only through densities. */
    private static boolean countsMass(Solution solution) {
        return solution.recipe() instanceof Recipe.Mix mix && mix.byMass();
    }

    /**
     * An amount of a solution in its own kind. Liquids mixed by mass weigh at most what the heaviest of them does, and
     * some more because they may shrink; empty where a density is not known.
     */
    private Optional<Quantity> asKind(Quantity amount, Dimension kind, Solution solution) {
        if (amount.dimension() == kind || !countsMass(solution)) {
            return Optional.of(asKind(amount, kind));
        }
        return heaviest(solution).value().map(density -> Amounts.times(amount.to(Unit.LITRE),
                density.highIn(Unit.GRAM_PER_LITRE) * SHRINKING)).map(grams -> new Quantity(grams.value(),
                        grams.low(), grams.high(), Unit.GRAM, grams.spread()));
    }

    private Densities.Density heaviest(Solution solution) {
        return new Densities(bench, strengths).ofHeaviest(solution.recipe().ingredients());
    }

    private static boolean byMass(Recipe recipe) {
        return recipe instanceof Recipe.Parts parts && parts.byMass()
                || recipe instanceof Recipe.Mix mix && mix.byMass()
                || recipe instanceof Recipe.Dilute dilute && dilute.strength()
                        .filter(strength -> strength.dimension() == Dimension.MASS_FRACTION).isPresent()
                || recipe instanceof Recipe.Dissolve dissolve
                        && dissolve.strength().dimension() == Dimension.MASS_FRACTION;
    }

    private static Quantity asKind(Quantity amount, Dimension kind) {
        if (amount.dimension() == kind) {
            return amount.to(kind == Dimension.MASS ? Unit.GRAM : Unit.MILLILITRE);
        }
        Quantity same = amount.to(kind == Dimension.MASS ? Unit.MILLILITRE : Unit.GRAM);
        return new Quantity(same.value(), same.low(), same.high(),
                kind == Dimension.MASS ? Unit.GRAM : Unit.MILLILITRE, same.spread());
    }

    /** A bath that is brought to a pH, or that does not keep as long as its step, is made fresh for each filling. */
    private int batches(Solution solution) {
        int fillings = 1;
        for (Uses.Use use : bench.uses().of(solution.id())) {
            boolean fresh = solution.recipe() instanceof Recipe.Adjust || solution.keeps().filter(keeps ->
                    keeps.in(Unit.MINUTE) < stepTimes.getOrDefault(use.by(), Minutes.NONE).high()).isPresent();
            fillings = fresh ? Math.max(fillings, use.fillings()) : fillings;
        }
        return fillings;
    }

    private Optional<Figure> batch(Solution solution, Optional<Figure> needed, int batches) {
        Dimension kind = byMass(solution.recipe()) ? Dimension.MASS : Dimension.VOLUME;
        List<Figure.Given> givens = new ArrayList<>();
        needed.ifPresent(figure -> givens.add(Ledger.given(figure)));
        if (batches > 1) {
            givens.add(Ledger.given("batches", "made fresh so many times", Quantity.count(batches), Job.CASE_FILE));
        }
        double shrinking = strengths.mayShrink(solution.recipe()) ? SHRINKING : 1;
        Optional<Quantity> once = needed.map(figure -> Amounts.times(asKind(figure.value(), kind),
                shrinking / batches));
        Optional<Quantity> make = solution.make().flatMap(amount -> asKind(amount, kind, solution));
        Optional<Quantity> least = solution.least().flatMap(amount -> asKind(amount, kind, solution));
        if (shrinking > 1 && needed.isPresent() && solution.make().isEmpty()) {
            givens.add(Ledger.given("shrinking", "so that enough is left when the volumes shrink",
                    Quantity.number(SHRINKING), Job.USUAL));
        }
        make.ifPresent(amount -> givens.add(Ledger.given("make", "amount to make", amount, Job.CASE_FILE)));
        least.ifPresent(amount -> givens.add(Ledger.given("least", "least that can be made well", amount, Job.CASE_FILE)));
        if (make.isPresent() && once.isPresent() && make.get().high() < once.get().low() * (1 - 1e-9)) {
            bench.messages().add(FigureMessages.LESS_THAN_NEEDED.at(solution.place(), "solution", solution.id(),
                    "make", Reading.of(Amounts.readable(make.get())),
                    "needed", Reading.of(Amounts.readable(once.get()))));
        }
        Optional<Quantity> amount = make.map(Quantity::exact).or(() -> larger(
                once.map(one -> Amounts.roundedUp(one, measuring.smallestStep(kind))), least.map(Quantity::exact)));
        return amount.map(value -> bench.ledger().put(solution.id() + ".batch", "to make at a time",
                Amounts.readable(value), "batch", givens));
    }

    private static Optional<Quantity> larger(Optional<Quantity> one, Optional<Quantity> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.or(() -> other);
        }
        return one.get().value() >= other.get().value() ? one : other;
    }

    private Preparation.Measure measure(Solution solution, RecipeFigures.Ingredient ingredient) {
        Quantity exact = Amounts.readable(ingredient.figure().value());
        Optional<MeasureChoice.Choice> choice = ingredient.from().isPresent() ? Optional.empty() : measuring.forAmount(exact);
        if (choice.isEmpty() && ingredient.from().isEmpty()) {
            bench.messages().add(FigureMessages.CANNOT_BE_MEASURED.at(solution.place(), "amount", Reading.of(exact),
                    "of", ingredient.of(), "solution", solution.id()));
        }
        return new Preparation.Measure(ingredient.of(), exact,
                choice.map(MeasureChoice.Choice::measured).orElse(exact), choice.map(MeasureChoice.Choice::with),
                choice.map(MeasureChoice.Choice::within),
                ingredient.from().map(from -> Amounts.readable(from.value())), ingredient.figure().id());
    }

    /**
     * The same preparations in the order in which to begin them.
     *
     * @param firstUse when each step begins, in minutes
     */
    static List<Preparation> inOrderOfBeginning(List<Preparation> made, Map<String, Double> begins) {
        return made.stream().sorted(java.util.Comparator.comparingDouble(
                one -> begins.getOrDefault(one.solution(), Double.POSITIVE_INFINITY))).toList();
    }

    /** When to begin each solution at the latest, in minutes from the start of the first step; negative before it. */
    Map<String, Double> begins(List<Preparation> made, Map<String, Double> stepStarts) {
        Map<String, Double> begins = new HashMap<>();
        for (Preparation one : made) {
            double first = bench.uses().of(one.solution()).stream().mapToDouble(use -> (use.step() ? stepStarts : begins)
                    .getOrDefault(use.by(), Double.POSITIVE_INFINITY)).min().orElse(Double.POSITIVE_INFINITY);
            begins.put(one.solution(), first - one.beginBefore().map(ready -> ready.highIn(Unit.MINUTE)).orElse(0.0));
        }
        return begins;
    }
}
