package org.benchleaf.derive.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.calculate.Origin;
import org.benchleaf.message.FigureMessages;
import org.benchleaf.model.Constant;
import org.benchleaf.model.Material;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.Part;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Works out what goes into one batch of a solution, and notes what that uses up. */
public final class RecipeFigures implements Recipe.Kinds<List<Ingredient>> {


    private final Bench bench;
    private final Solution solution;
    private final Figure batch;
    private final Strengths strengths;
    private final MixtureFigures mixtures;

    public RecipeFigures(Bench bench, Solution solution, Figure batch) {
        this.bench = bench;
        this.solution = solution;
        this.batch = batch;
        this.strengths = new Strengths(bench);
        this.mixtures = new MixtureFigures(bench, solution, batch);
    }

    private String id(String name) {
        return key(name).id();
    }

    private FigureKey key(String name) {
        return FigureKey.ofSolution(solution.id(), name);
    }

    private Job job(String calculation) {
        return new Job(calculation, solution.place()).source(solution.source());
    }

    private Quantity volume() {
        return batch.value().to(Unit.MILLILITRE);
    }

    private static List<Ingredient> ingredients(Ingredient... found) {
        return List.of(found);
    }

    private List<Ingredient> named(Map<String, Figure> made, String first, String firstName, String second,
            String secondName) {
        List<Ingredient> list = new ArrayList<>();
        Optional.ofNullable(made.get(id(firstName))).ifPresent(one -> list.add(new Ingredient(first, one)));
        Optional.ofNullable(made.get(id(secondName))).ifPresent(one -> list.add(new Ingredient(second, one)));
        return list;
    }

    /** Whether a strength is a bare per cent, from which no amount follows: that is said. */
    private boolean isOfNoKind(Quantity strength) {
        boolean bare = strength.dimension() == Dimension.SHARE;
        if (bare) {
            bench.notRecorded(id("stock-volume"), "the kind of per cent (by mass, by volume or mass by volume)", solution.place());
        }
        return bare;
    }

    /** Whether nobody recorded what a solution was made of or in, from which no amount follows: that is said. */
    private boolean isOfUnknown(String... ids) {
        boolean open = Stream.of(ids).anyMatch(id -> MissingValue.read(id).isPresent());
        if (open) {
            bench.notRecorded(id("stock-volume"), "of what the solution '" + solution.id() + "' was made", solution.place());
        }
        return open;
    }

    @Override
    public List<Ingredient> untold(Recipe.Untold recipe) {
        bench.notRecorded(id("first"), recipe.portions().isEmpty() ? "in which proportions the solution '" + solution.id() + "' was made"
                : "whether the parts of the solution '" + solution.id() + "' count mass or volume", solution.place());
        return List.of();
    }

    @Override
    public List<Ingredient> mix(Recipe.Mix recipe) {
        if (isOfUnknown(recipe.rest()) || recipe.shares().stream().map(Recipe.Share::strength).anyMatch(this::isOfNoKind)) {
            return List.of();
        }
        if (strengths.isEthanolAndWater(recipe) && !recipe.byMass()) {
            Recipe.Share share = recipe.shares().get(0);
            return strengths.asRead(share.from(), share.liquid()).filter(stock -> stock.dimension() == Dimension.VOLUME_FRACTION)
                    .map(stock -> ofEthanol(share, recipe.rest(), stock))
                    .orElseGet(() -> mixtures.work(recipe, List.of("stock"), "water"));
        }
        return mixtures.work(recipe, recipe.shares().size() == 1 ? List.of("stock")
                : recipe.shares().stream().map(share -> share.liquid().replace(' ', '-')).toList(), "rest");
    }

    private List<Ingredient> ofEthanol(Recipe.Share share, String rest, Quantity stock) {
        Map<String, Figure> made = bench.ledger().work(job("ethanol-mixture")
                .given("strength", share.strength(), Job.CASE_FILE).given("volume", volume(), new Origin.OfFigure(batch.key()))
                .given("stock", stock, mixtures.origin(share.from()))
                .gives("stock-volume", key("stock-volume")).gives("water-volume", key("water-volume"))
                .gives("stock-mass", key("stock-mass")).gives("water-mass", key("water-mass"))
                .gives("mass-fraction", key("mass-fraction")).gives("density", key("density"))
                .gives("flash-point", key("flash-point")));
        return named(made, share.from(), "stock-volume", rest, "water-volume");
    }

    /** A share of the whole is a mixture of two; a mass or an amount per volume is made up to its volume. */
    private List<Ingredient> weakened(String from, Quantity strength, String rest) {
        if (strength.dimension() == Dimension.VOLUME_FRACTION || strength.dimension() == Dimension.MASS_FRACTION) {
            Recipe.Mix mix = new Recipe.Mix("what is in " + from, strength, rest, from);
            return strengths.isEthanolAndWater(mix) && !mix.byMass() ? mix(mix)
                    : mixtures.work(mix, List.of("stock"), "diluent");
        }
        Optional<Quantity> stock = mixtures.stock(from, strengths.asRead(from, ""), strength);
        if (stock.isEmpty()) {
            return List.of();
        }
        Map<String, Figure> made = bench.ledger().work(job("dilution").given("stock", stock.get(), mixtures.origin(from))
                .given("strength", strength, Job.CASE_FILE).given("volume", volume(), new Origin.OfFigure(batch.key()))
                .note("Make up to the whole volume: volumes of two liquids need not add up.")
                .gives("stock-volume", key("stock-volume")).gives("diluent-volume", key("diluent-volume")));
        return named(made, from, "stock-volume", rest, "diluent-volume");
    }

    @Override
    public List<Ingredient> dissolve(Recipe.Dissolve recipe) {
        if (isOfUnknown(recipe.solid(), recipe.in()) || isOfNoKind(recipe.strength())) {
            return List.of();
        }
        boolean byMass = recipe.strength().dimension() == Dimension.MASS_FRACTION;
        Job job = job("dissolving").given("strength", recipe.strength(), Job.CASE_FILE);
        if (byMass) {
            job.given("mass", batch.value().to(Unit.GRAM), new Origin.OfFigure(batch.key())).gives("solvent-mass", key("solvent-mass"));
        } else {
            job.given("volume", volume(), new Origin.OfFigure(batch.key()));
        }
        if (recipe.strength().dimension() == Dimension.AMOUNT_PER_VOLUME) {
            Optional<Quantity> molarMass = bench.material(recipe.solid()).flatMap(Material::substance)
                    .map(key -> bench.library().reference().substances().get(key)).flatMap(Substance::molarMass);
            if (molarMass.isEmpty()) {
                bench.missing(id("mass"), "the molar mass of '" + recipe.solid() + "'",
                        "'substance:' in the materials, naming a row of the table of substances", solution.place());
                return List.of();
            }
            job.given("molar-mass", molarMass.get().asRead(), Origin.Place.SUBSTANCES);
        }
        Map<String, Figure> made = bench.ledger().work(job.gives("mass", key("mass"), "solid to weigh out"));
        if (made.isEmpty() || byMass) {
            return named(made, recipe.solid(), "mass", recipe.in(), "solvent-mass");
        }
        Figure liquid = bench.ledger().put(key("liquid-volume"), "liquid to make up to", volume(), "as-given",
                List.of(Ledger.given(batch)), "Dissolve in less, then make up to this volume.");
        List<Ingredient> list = new ArrayList<>(named(made, recipe.solid(), "mass", "", "-"));
        list.add(new Ingredient(recipe.in(), liquid));
        return list;
    }

    @Override
    public List<Ingredient> dilute(Recipe.Dilute recipe) {
        if (isOfUnknown(recipe.stock(), recipe.with()) || recipe.strength().filter(this::isOfNoKind).isPresent()) {
            return List.of();
        }
        if (recipe.strength().isPresent()) {
            return weakened(recipe.stock(), recipe.strength().get(), recipe.with());
        }
        if (recipe.oneIn().isEmpty()) {
            bench.missing(id("stock-volume"), "how weak it is to be", "'strength:' or 'one in:'", solution.place());
            return List.of();
        }
        Optional<Quantity> share = dilute(recipe, Dimension.VOLUME_FRACTION);
        if (share.isPresent()) {
            return weakened(recipe.stock(), share.get(), recipe.with());
        }
        Quantity oneIn = recipe.oneIn().get();
        Map<String, Figure> made = bench.ledger().work(job("one-in").given("one-in", oneIn, Job.CASE_FILE)
                .given("volume", volume(), new Origin.OfFigure(batch.key()))
                .gives("stock-volume", key("stock-volume"), "stock to measure out")
                .gives("diluent-volume", key("diluent-volume"), "liquid to add"));
        limeWater(recipe.stock(), "ph-ceiling").ifPresent(madeAt -> bench.ledger().work(job("lime-dilution")
                .given("one-in", oneIn, Job.CASE_FILE).given("made-at", madeAt, Job.CASE_FILE)
                .note("A ceiling: a bath open to air takes up carbon dioxide and lies lower. Measure and record.")
                .gives("ph", key("ph-ceiling"), "pH without carbon dioxide").gives("calcium", key("calcium"), "dissolved calcium")));
        return named(made, recipe.stock(), "stock-volume", recipe.with(), "diluent-volume");
    }

    /** The strength to which ethanol is thinned with water, counted so, by which its table tells both amounts. */
    private Optional<Quantity> dilute(Recipe.Dilute recipe, Dimension counted) {
        return Optional.of(recipe).filter(strengths::isEthanolInWater).flatMap(strengths::dilute)
                .filter(strength -> strength.dimension() == counted);
    }

    /** The temperature at which limewater was saturated; empty of any other stock, and where nobody recorded it, which is said. */
    private Optional<Quantity> limeWater(String stock, String asked) {
        Optional<Recipe.Saturate> made = bench.source().solution(stock).map(Solution::recipe).filter(Recipe.Saturate.class::isInstance)
                .map(Recipe.Saturate.class::cast).filter(recipe -> isLime(recipe.solid()));
        if (made.isPresent() && made.get().at().isEmpty()) {
            untoldTemperature(asked, stock);
        }
        return made.flatMap(Recipe.Saturate::at);
    }

    private void untoldTemperature(String asked, String saturated) {
        bench.notRecorded(id(asked), "the temperature at which '" + saturated + "' was saturated", solution.place());
    }

    private boolean isLime(String solid) {
        return solid.equals("calcium-hydroxide") || bench.material(solid).flatMap(Material::substance)
                .filter(substance -> substance.equals("calcium hydroxide") || substance.equals("calcium-hydroxide"))
                .isPresent();
    }

    @Override
    public List<Ingredient> saturate(Recipe.Saturate recipe) {
        if (isOfUnknown(recipe.solid(), recipe.in())) {
            return List.of();
        }
        Figure liquid = bench.ledger().put(key("liquid-volume"), "liquid to shake with the solid", volume(), "as-given",
                List.of(Ledger.given(batch)));
        if (!isLime(recipe.solid())) {
            return ingredients(new Ingredient(recipe.in(), liquid));
        }
        if (recipe.at().isEmpty()) {
            untoldTemperature("strength", solution.id());
            return ingredients(new Ingredient(recipe.in(), liquid));
        }
        Map<String, Figure> made = bench.ledger().work(job("lime-water")
                .given("temperature", recipe.at().get(), Job.CASE_FILE)
                .gives("strength", key("strength"), "calcium hydroxide dissolved at most")
                .gives("ph", key("ph"), "pH when fresh and saturated").gives("calcium", key("calcium")));
        Optional<Figure> strength = Optional.ofNullable(made.get(id("strength")));
        Optional<Figure> dissolved = strength.flatMap(one -> Optional.ofNullable(bench.ledger()
                .work(job("dissolving").given("strength", one).given("volume", volume(), new Origin.OfFigure(batch.key()))
                        .gives("mass", key("dissolves"), "solid that dissolves")).get(id("dissolves"))));
        if (dissolved.isEmpty()) {
            return ingredients(new Ingredient(recipe.in(), liquid));
        }
        Optional<Figure> solid = bench.ledger().one(job("sum").each("amounts", List.of(Ledger.given(dissolved.get())))
                .given("times", bench.constant("undissolved-excess"))
                .note("Some must stay undissolved; draw off only the clear part.")
                .gives("total", key("mass"), "solid to weigh out"));
        List<Ingredient> list = new ArrayList<>();
        solid.ifPresent(mass -> list.add(new Ingredient(recipe.solid(), mass, Optional.empty(), true)));
        list.add(new Ingredient(recipe.in(), liquid));
        return list;
    }

    @Override
    public List<Ingredient> adjust(Recipe.Adjust recipe) {
        if (isOfUnknown(recipe.liquid(), recipe.with())) {
            return List.of();
        }
        if (strengths.isWater(recipe.with())) {
            bench.notRecorded(id("stock-volume"), "how much of '" + recipe.liquid() + "' was thinned with how much of '" + recipe.with()
                    + "'", solution.place());
            return List.of();
        }
        Figure liquid = bench.ledger().put(key("liquid-volume"), "liquid to bring to the pH", volume(), "as-given",
                List.of(Ledger.given(batch)));
        List<Ingredient> list = new ArrayList<>(ingredients(new Ingredient(recipe.liquid(), liquid)));
        limeWater(recipe.with(), "dose").ifPresent(madeAt -> {
            Optional<Figure> least = dose(recipe, madeAt, Optional.empty(), "dose",
                    "stock to begin with, in water free of carbon dioxide");
            dose(recipe, madeAt, Optional.of(bench.constant("busy-room-air")), "dose-ceiling",
                    "stock at most, in water in balance with the air of a busy room").ifPresent(ceiling -> {
                list.add(new Ingredient(recipe.with(), ceiling, least.or(() -> Optional.of(ceiling)), false));
                compareWithReadings(recipe, ceiling);
            });
        });
        return list;
    }

    private Optional<Figure> dose(Recipe.Adjust recipe, Quantity madeAt, Optional<Constant> carbonDioxide, String name,
            String label) {
        Optional<Quantity> ph = recipe.to().forSums();
        if (ph.isEmpty()) {
            return Optional.empty();
        }
        Job job = job("lime-dose").given("ph", ph.get(), Job.CASE_FILE).given("volume", volume(), new Origin.OfFigure(batch.key()))
                .given("made-at", madeAt, Job.CASE_FILE).gives("stock-volume", key(name), label);
        carbonDioxide.ifPresent(air -> job.given("carbon-dioxide", air));
        if (name.equals("dose-ceiling")) {
            job.gives("calcium", key("calcium"), "dissolved calcium at most");
        }
        recipe.at().ifPresent(at -> job.given("temperature", at, Job.CASE_FILE));
        return Optional.ofNullable(bench.ledger().work(job).get(id(name)));
    }

    /** What was added is evidence; a dose above the ceiling says something about the water. */
    private void compareWithReadings(Recipe.Adjust recipe, Figure ceiling) {
        double most = ceiling.value().highIn(Unit.MILLILITRE);
        for (Step step : bench.source().steps()) {
            step.part(Part.Bath.class).filter(bath -> bath.of().equals(solution.id())).stream()
                    .flatMap(bath -> bath.readings().stream())
                    .filter(reading -> reading.added().filter(one -> one.lowIn(Unit.MILLILITRE) > most).isPresent())
                    .filter(reading -> bench.scale().isOne()).findFirst()
                    .ifPresent(reading -> bench.messages().add(FigureMessages.MORE_THAN_THE_CEILING.at(step.place(),
                            "bath", reading.bath(), "step", step.id(), "added", Reading.of(reading.added().get()),
                            "stock", recipe.with(), "ceiling", Reading.of(ceiling.value()))));
        }
    }

    @Override
    public List<Ingredient> parts(Recipe.Parts recipe) {
        List<Recipe.Portion> portions = recipe.portions();
        Quantity total = recipe.byMass() ? batch.value().to(Unit.GRAM) : volume();
        Job job = parts(recipe, total).gives("first", key("first"), "first part")
                .gives("second", key("second"), "second part");
        if (recipe.byMass() && portions.size() == 2) {
            job.gives("mass-fraction", key("mass-fraction"), recipe.cooked()
                    ? "share of the first part before cooking" : "share of the first part");
        }
        List<Ingredient> list = new ArrayList<>(named(bench.ledger().work(job), portions.get(0).of(), "first",
                portions.get(1).of(), "second"));
        for (int i = 2; i < portions.size(); i++) {
            FigureKey name = key("part-" + (i + 1));
            String of = portions.get(i).of();
            Optional.ofNullable(bench.ledger().work(parts(recipe, total)
                    .given("part", Quantity.number(i + 1), Job.CASE_FILE).gives("part", name, "part " + (i + 1)))
                    .get(name.id())).ifPresent(figure -> list.add(new Ingredient(of, figure)));
        }
        return list;
    }

    private Job parts(Recipe.Parts recipe, Quantity total) {
        return job("parts").given("parts", recipe.portions().stream().map(one -> Quantity.number(one.parts())).toList(),
                Job.CASE_FILE).given("total", total, new Origin.OfFigure(batch.key()));
    }
}
