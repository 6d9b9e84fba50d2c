package org.benchleaf.derive.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.calculate.Inputs;
import org.benchleaf.calculate.Origin;
import org.benchleaf.calculate.Outcome;
import org.benchleaf.message.FigureMessages;
import org.benchleaf.model.Material;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Solution;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Works out a mixture of any number of liquids: the amount of every stock and of the rest, by mass and by volume. */
final class MixtureFigures {

    private final Bench bench;
    private final Solution solution;
    private final Figure batch;
    private final Strengths strengths;
    private final Densities densities;

    MixtureFigures(Bench bench, Solution solution, Figure batch) {
        this.bench = bench;
        this.solution = solution;
        this.batch = batch;
        this.strengths = new Strengths(bench);
        this.densities = new Densities(bench, strengths);
    }

    /**
     * What to measure out, in the order of pouring, the rest last.
     *
     * @param names what the figures of the parts are called, in their order
     * @param rest what the figure of the rest is called
     */
    List<Ingredient> work(Recipe.Mix recipe, List<String> names, String rest) {
        List<Quantity> stocks = stocks(recipe);
        List<Ingredient> list = new ArrayList<>();
        if (stocks.size() < recipe.shares().size()) {
            return list;
        }
        for (int i = 0; i < names.size(); i++) {
            amount(recipe, stocks, i, "part", names.get(i), recipe.shares().get(i).from()).ifPresent(list::add);
        }
        if (list.size() == names.size()) {
            amount(recipe, stocks, 0, "rest", rest, recipe.rest()).ifPresent(list::add);
            together(list);
        }
        return list;
    }

    /** How strong each stock is, as its share counts; shorter where one cannot be told, which is then said. */
    private List<Quantity> stocks(Recipe.Mix recipe) {
        List<Quantity> stocks = new ArrayList<>();
        for (Recipe.Share share : recipe.shares()) {
            if (share.asItIs()) {
                stocks.add(Quantity.of(100, recipe.byMass() ? Unit.PERCENT_BY_MASS : Unit.PERCENT_BY_VOLUME));
            } else {
                stock(share.from(), strengths.asRead(share.from(), share.liquid()), share.strength())
                        .ifPresent(stocks::add);
            }
        }
        return stocks;
    }

    /** The strength of a stock in the way of the wanted one; empty where it cannot be had so, which is then said. */
    Optional<Quantity> stock(String from, Optional<Quantity> strength, Quantity wanted) {
        if (strength.isEmpty()) {
            bench.missing(solution.id() + ".stock-volume", "the strength of '" + from + "'",
                    "'strength:' where it is described", solution.place());
            return Optional.empty();
        }
        if (strength.get().dimension() == Dimension.SHARE) {
            bench.notRecorded(solution.id() + ".stock-volume", "the kind of per cent of '" + from + "'", solution.place());
            return Optional.empty();
        }
        if (strength.get().dimension() == wanted.dimension()) {
            return strength;
        }
        Optional<Quantity> converted = strengths.isEthanol(from) ? ofEthanol(strength.get(), wanted) : Optional.empty();
        if (converted.isEmpty()) {
            bench.messages().add(FigureMessages.UNLIKE_KINDS.at(solution.place(), "solution", solution.id(),
                    "wanted", Reading.of(wanted), "stock", from, "found", Reading.of(strength.get())));
        }
        return converted;
    }

    private Optional<Quantity> ofEthanol(Quantity strength, Quantity wanted) {
        boolean byMass = wanted.dimension() == Dimension.MASS_FRACTION;
        if (!byMass && wanted.dimension() != Dimension.VOLUME_FRACTION) {
            return Optional.empty();
        }
        Outcome outcome = bench.ledger().outcome("ethanol-density", Inputs.none()
                .with(byMass ? "strength" : "mass-fraction", strength, Job.MATERIAL)
                .with("temperature", bench.constant("volumes-meant-at").value(), Job.USUAL));
        return outcome instanceof Outcome.Worked worked
                ? Optional.ofNullable(worked.numbers().get(byMass ? "mass-fraction" : "strength")) : Optional.empty();
    }

    /** Where the strength of a stock comes from. */
    Origin origin(String from) {
        return bench.source().solution(from).isPresent() ? Job.CASE_FILE : Job.MATERIAL;
    }

    private Optional<Ingredient> amount(Recipe.Mix recipe, List<Quantity> stocks, int which,
            String output, String name, String of) {
        boolean byMass = recipe.byMass();
        FigureKey key = key(byMass ? "mass" : "volume", name);
        Densities.Density density = densities.of(of);
        Job job = new Job("mixture", solution.place()).source(solution.source())
                .given("shares", recipe.shares().stream().map(Recipe.Share::strength).toList(), Job.CASE_FILE)
                .given("stocks", stocks, origin(recipe.shares().get(which).from()))
                .given("total", byMass ? batch.value().to(Unit.GRAM) : batch.value().to(Unit.MILLILITRE), new Origin.OfFigure(batch.key()))
                .given("part", Quantity.number(which + 1), Job.CASE_FILE).gives(output, key, called(of));
        if (density.value().isEmpty()) {
            job.note(bench.say(byMass ? "Its volume cannot be worked out, because {why}." : "Its mass cannot be worked out, because {why}.",
                    "why", density.why()));
        }
        Optional<Figure> figure = Optional.ofNullable(bench.ledger().work(job).get(key.id()));
        figure.ifPresent(amount -> density.value().ifPresent(known -> bench.ledger().work(
                new Job("mass-and-volume", solution.place()).source(density.source()).given("amount", amount)
                        .given("density", known.asRead(), Origin.Place.SUBSTANCES).gives(byMass ? "volume" : "mass",
                                key(byMass ? "volume" : "mass", name), called(of)))));
        return figure.map(amount -> new Ingredient(of, amount));
    }

    private FigureKey key(String name, String liquid) {
        return new FigureKey(FigureKey.Owner.SOLUTION, solution.id(), name, liquid);
    }

    private String called(String of) {
        return bench.source().solution(of).map(Solution::name)
                .or(() -> bench.material(of).map(Material::name).map(bench::say)).orElse(of);
    }

    /** The volumes of a mixture by mass added up, where every one is known; what they come to joined is not. */
    private void together(List<Ingredient> list) {
        List<Figure> volumes = list.stream().map(one -> one.figure().key()).filter(key -> key.name().equals("mass"))
                .flatMap(key -> bench.ledger().figure(key("volume", key.qualifier()).id()).stream()).toList();
        if (volumes.size() == list.size()) {
            bench.ledger().work(new Job("sum", solution.place())
                    .each("amounts", volumes.stream().map(Ledger::given).toList())
                    .note("Joined they may come to less; by how much is not known.")
                    .gives("total", FigureKey.ofSolution(solution.id(), "separate-volume"), "volume of all before they are joined"));
        }
    }
}
