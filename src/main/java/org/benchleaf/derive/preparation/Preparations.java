package org.benchleaf.derive.preparation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.calculate.Inputs;
import org.benchleaf.derive.figure.AmountConversion;
import org.benchleaf.derive.figure.BatchPlan;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.Densities;
import org.benchleaf.derive.figure.Ingredient;
import org.benchleaf.derive.figure.Job;
import org.benchleaf.derive.figure.Ledger;
import org.benchleaf.derive.figure.MeasureChoice;
import org.benchleaf.derive.figure.Minutes;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.derive.figure.RecipeFigures;
import org.benchleaf.derive.figure.Strengths;
import org.benchleaf.derive.figure.TrayChoice;
import org.benchleaf.derive.figure.Uses;
import org.benchleaf.derive.hazard.Compositions;
import org.benchleaf.derive.time.CriticalPath;
import org.benchleaf.message.FigureMessages;
import org.benchleaf.model.Constant;
import org.benchleaf.model.Part;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Solution;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.science.Batches;
import org.benchleaf.science.Measuring;

/** Works out how much of each solution to make, from what uses it, and what to measure out for it. */
final class Preparations {

    private static final String HEAVIEST = "A volume is taken to weigh as much as the heaviest of the liquids.";

    private final Bench bench;
    private final Strengths strengths;
    /** Solutions of a retold case of which nothing says how much is needed: told together, since no sheet asks for it. */
    private final List<Solution> unsized = new ArrayList<>();
    private final Compositions compositions;
    private final MeasureChoice measuring;
    private final Map<String, Minutes> stepTimes;
    private final BatchPlan.Planner planner;

    /**
     * Makes ready to work.
     *
     * @param stepTimes how long each step takes, by id, to see whether a solution keeps that long
     * @param planner plans the batches where it is known when they are drawn
     */
    Preparations(Bench bench, Map<String, Minutes> stepTimes, BatchPlan.Planner planner) {
        this.bench = bench;
        this.strengths = new Strengths(bench);
        this.compositions = new Compositions(bench);
        this.measuring = MeasureChoice.of(bench);
        this.stepTimes = stepTimes;
        this.planner = planner;
    }

    /** What to make, users before what they use. */
    List<Preparation> make() {
        Map<String, List<String>> usedBy = usedBy();
        tellCircles(usedBy);
        List<Preparation> made = new ArrayList<>();
        for (String id : CriticalPath.order(usedBy)) {
            bench.source().solution(id).flatMap(this::prepare).ifPresent(made::add);
        }
        unsized.stream().findFirst().ifPresent(first -> bench.messages().add(FigureMessages.NOTHING_TO_MAKE.at(first.place(),
                "solution", unsized.stream().map(Solution::id).collect(Collectors.joining("', '")))));
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
        Optional<Figure> needed = sum(solution, bench.uses().of(solution.id()), "needed", "used in all");
        Optional<BatchPlan> plan = planner.of(solution);
        int batches = plan.map(BatchPlan::batches).orElseGet(() -> batches(solution));
        List<Figure> ofBatches = plan.map(several -> ofBatches(solution, several)).orElse(List.of());
        // All batches are made alike, for one recipe serves them: the one of which most is drawn decides.
        Optional<Figure> most = ofBatches.stream().max(Comparator.comparingDouble(one -> one.value().highIn(one.value().dimension()
                == Dimension.MASS ? Unit.GRAM : Unit.MILLILITRE)));
        Optional<Figure> batch = most.isPresent() ? batch(solution, most, 1) : batch(solution, needed, batches);
        if (batch.isEmpty()) {
            tellNoBatch(solution);
            return Optional.empty();
        }
        Set<String> before = bench.ledger().ids();
        List<Preparation.Measure> measures = new ArrayList<>();
        for (Ingredient ingredient : solution.recipe()
                .ask(new RecipeFigures(bench, solution, batch.get()))) {
            bench.uses().add(new Uses.Use(ingredient.of(), solution.id(), false, ingredient.figure(), batches, 1));
            measures.add(measure(solution, ingredient));
        }
        Set<String> figures = bench.ledger().ids();
        figures.removeAll(before);
        needed.ifPresent(figure -> figures.add(figure.id()));
        ofBatches.forEach(figure -> figures.add(figure.id()));
        figures.add(batch.get().id());
        return Optional.of(new Preparation(solution.id(), needed.orElse(batch.get()).value(), batch.get().value(),
                batches, measures, solution.readyIn(), solution.handsOn(), solution.keeps(), usedIn(solution.id(),
                        new LinkedHashSet<>()), List.copyOf(figures), addsUp(solution),
                needed.filter(used -> isFarMore(batch.get(), batches, used)).map(used -> surplus(solution, batch.get()))));
    }

    private boolean isFarMore(Figure batch, int batches, Figure needed) {
        return Batches.isFarMore(batch.value(), Quantity.count(batches), needed.value(), bench.constant("far-more").value());
    }

    private Preparation.Surplus surplus(Solution solution, Figure batch) {
        if (solution.make().isPresent()) {
            return Preparation.Surplus.ASKED_FOR;
        }
        return solution.least().flatMap(amount -> asKind(amount, solution))
                .filter(least -> Batches.suffices(least, batch.value())).isPresent()
                ? Preparation.Surplus.LEAST_MADE_WELL : Preparation.Surplus.LEAST_MEASURED;
    }

    /** Whether a thinned liquid and what thins it are nearly water; ethanol and water go by their table. */
    private boolean addsUp(Solution solution) {
        return solution.recipe() instanceof Recipe.Dilute dilute
                && (strengths.isEthanolInWater(dilute) || isNearlyWater(dilute.stock()) && isNearlyWater(dilute.with()));
    }

    private boolean isNearlyWater(String id) {
        return compositions.holds(id, "water", bench.constant("nearly-water").value());
    }

    private void tellNoBatch(Solution solution) {
        Optional<String> why = Optional.of(heaviest(solution).why()).filter(text -> countsMass(solution)
                && !text.isEmpty() && !(bench.uses().of(solution.id()).isEmpty() && solution.make().isEmpty()));
        if (why.isEmpty() && bench.source().sources().retelling().isPresent()) {
            unsized.add(solution);
            return;
        }
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

    /** What is used from each batch, where there are several. */
    private List<Figure> ofBatches(Solution solution, BatchPlan plan) {
        List<Figure> figures = new ArrayList<>();
        for (int number = 1; plan.batches() > 1 && number <= plan.batches(); number++) {
            sum(solution, plan.drawn().get(number - 1), "needed-of-batch-" + number, "used from batch " + number).ifPresent(figures::add);
        }
        return figures;
    }

    private Optional<Figure> sum(Solution solution, List<Uses.Use> uses, String name, String label) {
        if (uses.isEmpty()) {
            return Optional.empty();
        }
        Dimension kind = kind(solution);
        Job job = Uses.sum(uses, solution.place()).gives("total", FigureKey.ofSolution(solution.id(), name), label).readable();
        if (uses.stream().anyMatch(use -> use.figure().value().dimension() != kind)) {
            Optional<Quantity> density = density(solution);
            if (density.isEmpty()) {
                return Optional.empty();
            }
            job.word("as", kind == Dimension.MASS ? "mass" : "volume", Job.USUAL)
                    .given("density", density.get(), Job.USUAL);
            if (countsMass(solution)) {
                job.note(HEAVIEST);
            }
        }
        return bench.ledger().one(job);
    }

    private static Dimension kind(Solution solution) {
        return byMass(solution.recipe()) ? Dimension.MASS : Dimension.VOLUME;
    }

    /** A mixture by mass gives a volume only through densities. */
    private static boolean countsMass(Solution solution) {
        return solution.recipe() instanceof Recipe.Mix mix && mix.byMass();
    }

    /**
     * What turns a mass of a solution into a volume. Liquids mixed by mass weigh at most what the heaviest of them does;
     * empty where a density is not known.
     */
    private Optional<Quantity> density(Solution solution) {
        return countsMass(solution) ? heaviest(solution).value()
                : Optional.of(bench.constant("density-like-water").value());
    }

    private Optional<Quantity> asKind(Quantity amount, Solution solution) {
        Dimension kind = kind(solution);
        return amount.dimension() == kind ? Optional.of(amount) : density(solution).flatMap(density ->
                bench.ledger().value("mass-and-volume", Inputs.none().with("amount", amount, Job.CASE_FILE)
                        .with("density", density, Job.USUAL), kind == Dimension.MASS ? "mass" : "volume"));
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
        if (needed.isEmpty() && bench.scale().spare().isPresent()) {
            // A class makes only what its steps use.
            return Optional.empty();
        }
        Optional<Quantity> make = solution.make().flatMap(amount -> asKind(amount, solution));
        Optional<Constant> shrinking = Optional.of(bench.constant("shrinking")).filter(share -> mayShrink(solution));
        needed.ifPresent(used -> make.ifPresent(amount -> tellTooLittle(solution, amount, used, shrinking, batches)));
        if (make.isPresent()) {
            return Optional.of(bench.ledger().put(FigureKey.ofSolution(solution.id(), "batch"), "to make at a time",
                    AmountConversion.readable(make.get()), "as-given",
                    List.of(Ledger.given("make", "amount to make", solution.make().get(), Job.CASE_FILE))));
        }
        Optional<Quantity> least = solution.least().flatMap(amount -> asKind(amount, solution));
        if (needed.isEmpty() && least.isEmpty()) {
            return Optional.empty();
        }
        Job job = new Job("batch", solution.place()).given("batches", Quantity.count(batches), Job.CASE_FILE)
                .gives("batch", FigureKey.ofSolution(solution.id(), "batch"), "to make at a time").readable();
        shrinking.ifPresent(share -> job.given("shrinking", share));
        needed.ifPresent(used -> job.given("needed", used));
        least.ifPresent(amount -> job.given("least", amount, Job.CASE_FILE));
        measuring.smallestStep(kind(solution)).ifPresent(step -> job.given("step", step, Job.STUDIO));
        return bench.ledger().one(job);
    }

    /** Whether less may come out than was measured in: of volumes that are joined, also where they are weighed. */
    private boolean mayShrink(Solution solution) {
        return strengths.mayShrink(solution.recipe()) || countsMass(solution) && bench.uses().of(solution.id()).stream()
                .anyMatch(use -> use.figure().value().dimension() == Dimension.VOLUME);
    }

    private void tellTooLittle(Solution solution, Quantity make, Figure needed, Optional<Constant> shrinking, int batches) {
        Quantity once = Batches.eachTime(Quantity.of(needed.value().low(), needed.value().unit()), Quantity.count(batches),
                shrinking.map(Constant::value).orElse(Quantity.of(0, Unit.PERCENT)));
        if (!Batches.suffices(make, once)) {
            bench.messages().add(FigureMessages.LESS_THAN_NEEDED.at(solution.place(), "solution", solution.id(),
                    "make", Reading.of(AmountConversion.readable(make)), "needed", Reading.of(AmountConversion.readable(once))));
        }
    }

    private Preparation.Measure measure(Solution solution, Ingredient ingredient) {
        Quantity exact = AmountConversion.readable(ingredient.figure().value());
        Optional<Preparation.Mark> mark = mark(solution, ingredient);
        boolean measured = ingredient.from().isEmpty() && mark.isEmpty();
        Optional<MeasureChoice.Choice> choice = measured ? measuring.forAmount(exact) : Optional.empty();
        if (choice.isEmpty() && measured) {
            bench.messages().add(FigureMessages.CANNOT_BE_MEASURED.at(solution.place(), "amount", Reading.of(exact),
                    "of", ingredient.of(), "solution", solution.id()));
        }
        boolean excess = ingredient.excess() && choice.isPresent();
        Optional<Quantity> relative = choice.filter(one -> !excess)
                .map(one -> Measuring.relative(one.measured(), one.within()))
                .filter(share -> share.value() > bench.constant("coarsest-measuring").value().in(Unit.PERCENT));
        return new Preparation.Measure(ingredient.of(), exact,
                excess ? Measuring.excess(exact) : choice.map(MeasureChoice.Choice::measured).orElse(exact),
                choice.map(MeasureChoice.Choice::with), choice.map(MeasureChoice.Choice::vessel), mark,
                choice.map(MeasureChoice.Choice::within),
                ingredient.from().map(from -> AmountConversion.readable(from.value())),
                ingredient.from().flatMap(any -> measuring.dropper(exact)), relative, excess,
                ingredient.figure().id());
    }

    /** How far the tray is filled in which a liquid is brought to its pH; nobody measures it first. */
    private Optional<Preparation.Mark> mark(Solution solution, Ingredient ingredient) {
        return solution.recipe() instanceof Recipe.Adjust adjust && adjust.liquid().equals(ingredient.of())
                ? bench.source().steps().stream().flatMap(step -> step.part(Part.Bath.class).filter(bath -> bath.of().equals(solution.id()))
                        .flatMap(bath -> TrayChoice.mark(bench.library(), bench.source().object(), step, bath)).stream())
                        .findFirst() : Optional.empty();
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
