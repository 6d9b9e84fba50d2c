package org.benchleaf.derive;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.model.Material;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.science.EthanolWater;
import org.benchleaf.science.OutsideRange;

/** Works out what each prepared solution is made of, ingredient by ingredient. */
final class Compositions implements Recipe.Kinds<Composition> {

    /** A stock that is added drop by drop leaves so little that only its presence counts. */
    private static final double TRACE = 1e-4;
    /** The lightest liquid that the trade dissolves things in: a share by mass worked out with it is on the large side. */
    private static final double LIGHTEST = 0.785;

    /** What is sold at this share counts as the pure substance: the rest is no part on its own; common practice. */
    private static final double PURE = 0.98;

    private final Bench bench;
    private final Strengths strengths;
    private final Densities densities;
    private final UnknownWords unknown;
    private final Map<String, Composition> known = new HashMap<>();
    /** What has its pH from the equilibrium: diluted, it is asked again. */
    private final Set<String> worked = new HashSet<>();

    Compositions(Bench bench) {
        this.bench = bench;
        this.strengths = new Strengths(bench);
        this.densities = new Densities(bench, strengths);
        this.unknown = new UnknownWords(bench.library().reference());
    }

    /** What a solution or material is made of. */
    Composition of(String id) {
        Composition done = known.get(id);
        if (done != null) {
            return done;
        }
        // Against circles, which are told elsewhere.
        known.put(id, Composition.unknown(unknown.part(id)));
        Composition made = bench.source().solution(id).map(Solution::recipe).map(recipe -> recipe.ask(this))
                .orElseGet(() -> bench.material(id).map(this::bought)
                        .orElseGet(() -> Composition.unknown(unknown.part(id))));
        boolean stated = made.ph().isPresent();
        Composition told = new MixturePh(bench.library().reference()).told(made);
        if (!stated) {
            worked.add(id);
        }
        known.put(id, told);
        return told;
    }

    private Optional<Substance> substance(String key) {
        return Optional.ofNullable(bench.library().reference().substances().get(key));
    }

    /** The row of an ingredient, which is named as a substance or as a material. */
    private Optional<Substance> substanceOf(String id) {
        return substance(id).or(() -> bench.material(id).flatMap(Material::substance).flatMap(this::substance));
    }

    private Composition bought(Material material) {
        Optional<Substance> row = material.substance().flatMap(this::substance);
        if (row.isEmpty()) {
            return Composition.unknown(material.substance().map(key -> unknown.substance(material.name(), key))
                    .orElseGet(() -> unknown.part(material.name()))).with(material.ph(), Optional.empty());
        }
        // A solution sold without its strength is taken as the table has it, which is the strongest.
        double share = material.strength().map(strength -> share(row.get(), strength)).orElse(1.0);
        Map<String, Double> shares = new LinkedHashMap<>();
        shares.put(row.get().key(), share);
        boolean inWater = row.get().suppliedInWater() || row.get().key().equals("ethanol");
        if (share < 1 && inWater) {
            shares.put("water", 1 - share);
        }
        Optional<Composition.Spirit> spirit = spirit(row.get(), byVolumeOrPure(material.strength()));
        Composition bought = new Composition(shares, material.ph(), spirit, List.of());
        return share < PURE && !inWater ? bought.lacking(unknown.restOf(material.name(), row.get().name())) : bought;
    }

    /** Vapour that burns comes from what has a flash point or is classified by one. */
    private static Optional<Composition.Spirit> spirit(Substance substance, Quantity strength) {
        boolean burns = substance.fire().isPresent()
                || substance.classes().stream().anyMatch(one -> one.name().startsWith("Flam. Liq."));
        return burns ? Optional.of(new Composition.Spirit(substance.key(), strength)) : Optional.empty();
    }

    /** A strength stated in another way counts as the pure liquid, which is the careful side. */
    private static Quantity byVolumeOrPure(Optional<Quantity> strength) {
        return strength.filter(one -> one.dimension() == Dimension.VOLUME_FRACTION)
                .orElse(Quantity.of(100, Unit.PERCENT_BY_VOLUME));
    }

    /** The share by mass that a strength means, the larger one where it is not exact. */
    private static double share(Substance substance, Quantity strength) {
        double share = switch (strength.dimension()) {
            case MASS_FRACTION -> strength.highIn(Unit.PERCENT_BY_MASS) / 100;
            case MASS_PER_VOLUME -> strength.highIn(Unit.GRAM_PER_LITRE) / 1000 / LIGHTEST;
            case AMOUNT_PER_VOLUME -> substance.molarMass().map(mass -> strength.highIn(Unit.MOLE_PER_LITRE)
                    * mass.in(Unit.GRAM_PER_MOLE) / 1000 / LIGHTEST).orElse(1.0);
            case VOLUME_FRACTION -> byVolume(substance, strength);
            default -> 1;
        };
        return Math.max(0, Math.min(1, share));
    }

    private static double byVolume(Substance substance, Quantity strength) {
        if (substance.key().equals("ethanol")) {
            try {
                return EthanolWater.massFraction(Quantity.of(strength.highIn(Unit.PERCENT_BY_VOLUME),
                        Unit.PERCENT_BY_VOLUME)).in(Unit.PERCENT_BY_MASS) / 100;
            } catch (OutsideRange impossible) {
                return 1;
            }
        }
        return strength.highIn(Unit.PERCENT_BY_VOLUME) / 100;
    }

    @Override
    public Composition mix(Recipe.Mix recipe) {
        List<Weighed> parts = new ArrayList<>();
        parts.add(weighed(of(recipe.rest()), recipe.rest(), 0, recipe.byMass()));
        double poured = 0;
        for (Recipe.Share share : recipe.shares()) {
            Weighed part = strengths.isEthanolAndWater(recipe) ? ofEthanol(share) : part(share, recipe.byMass());
            poured += part.amount();
            parts.add(1, part);
        }
        parts.set(0, parts.get(0).with(Math.max(0, 1 - poured)));
        return joined(parts).with(Optional.empty(), burning(recipe));
    }

    /**
     * Something that is poured.
     *
     * @param what it is made of
     * @param amount its share of the whole, as it is poured
     * @param density by which that share becomes a mass; 1 where it is a mass
     */
    private record Weighed(Composition what, double amount, double density) {

        Weighed with(double another) {
            return new Weighed(what, another, density);
        }

        double mass() {
            return amount * density;
        }
    }

    private Weighed weighed(Composition what, String id, double amount, boolean byMass) {
        if (byMass) {
            return new Weighed(what, amount, 1);
        }
        Densities.Density density = densities.of(id);
        return density.value().map(known -> new Weighed(what, amount, known.in(Unit.KILOGRAM_PER_CUBIC_METRE) / 1000))
                .orElseGet(() -> new Weighed(what.unknown().isEmpty()
                        ? what.lacking(unknown.shareByMass(id, density.why())) : what, amount, 1));
    }

    /** Ethanol and water by their table: the share by mass of the ethanol itself, and the rest of it water. */
    private Weighed ofEthanol(Recipe.Share share) {
        Composition stock = of(share.from());
        Optional<Substance> ethanol = substance("ethanol");
        Composition pure = ethanol.isEmpty() ? stock : new Composition(Map.of("ethanol", 1.0), Optional.empty(),
                Optional.empty(), stock.unknown());
        return new Weighed(pure, ethanol.map(row -> share(row, share.strength())).orElse(1.0), 1);
    }

    private Weighed part(Recipe.Share share, boolean byMass) {
        Composition stock = of(share.from());
        Optional<Quantity> strength = strengths.of(share.from(), share.liquid())
                .filter(one -> one.dimension() == share.strength().dimension() && one.value() > 0);
        double wanted = share.strength().high() * share.strength().unit().factor();
        if (share.asItIs() || strength.isPresent()) {
            double pure = share.asItIs() ? 1 : strength.get().value() * strength.get().unit().factor();
            return weighed(stock, share.from(), Math.min(1, wanted / pure), byMass);
        }
        Optional<Substance> liquid = substanceOf(share.liquid()).or(() -> substanceOf(share.from()));
        Composition pure = liquid.map(row -> new Composition(Map.of(row.key(), 1.0), Optional.empty(),
                Optional.empty(), stock.unknown())).orElseGet(() -> stock.lacking(unknown.part(share.liquid())));
        return weighed(pure, share.from(), wanted, byMass);
    }

    private static Composition joined(List<Weighed> parts) {
        Composition made = parts.get(0).what();
        double mass = parts.get(0).mass();
        for (Weighed next : parts.subList(1, parts.size())) {
            mass += next.mass();
            made = next.what().joined(made, mass == 0 ? 0 : next.mass() / mass);
        }
        return made;
    }

    /** The flammable liquid of a mixture. Several count as the one that burns first, undiluted, on the careful side. */
    private Optional<Composition.Spirit> burning(Recipe.Mix recipe) {
        List<Composition.Spirit> several = new ArrayList<>();
        for (Recipe.Share share : recipe.shares()) {
            (share.asItIs() ? Optional.<Substance>empty() : substanceOf(share.liquid()).or(() -> substanceOf(share.from())))
                    .flatMap(row -> spirit(row, byVolumeOrPure(Optional.of(share.strength()))))
                    .or(() -> of(share.from()).spirit()).ifPresent(several::add);
        }
        of(recipe.rest()).spirit().ifPresent(several::add);
        return first(several);
    }

    private Optional<Composition.Spirit> first(List<Composition.Spirit> several) {
        return several.size() < 2 ? several.stream().findFirst()
                : several.stream().min(Comparator.comparingDouble(this::flashPoint)).map(one ->
                        new Composition.Spirit(one.substance(), Quantity.of(100, Unit.PERCENT_BY_VOLUME)));
    }

    /** In °C; the lowest of all where none is known. */
    private double flashPoint(Composition.Spirit one) {
        return substance(one.substance()).flatMap(Substance::fire).flatMap(Substance.Fire::flashPoint)
                .map(point -> point.lowIn(Unit.CELSIUS)).orElse(Double.NEGATIVE_INFINITY);
    }

    @Override
    public Composition dissolve(Recipe.Dissolve recipe) {
        Composition solvent = of(recipe.in());
        Composition solid = of(recipe.solid());
        double share = substanceOf(recipe.solid()).map(row -> share(row, recipe.strength())).orElse(0.0);
        return solid.joined(solvent, share).with(solid.ph(), solvent.spirit().or(solid::spirit));
    }

    @Override
    public Composition dilute(Recipe.Dilute recipe) {
        Composition stock = of(recipe.stock());
        Composition with = of(recipe.with());
        double part = recipe.oneIn().map(parts -> 1 / parts.lowIn(parts.unit()))
                .or(() -> recipe.strength().flatMap(wanted -> part(recipe.stock(), wanted))).orElse(1.0);
        Optional<Composition.Spirit> spirit = stock.spirit().map(one -> recipe.strength()
                .filter(wanted -> wanted.dimension() == Dimension.VOLUME_FRACTION)
                .map(wanted -> new Composition.Spirit(one.substance(), wanted))
                .orElseGet(() -> new Composition.Spirit(one.substance(), Amounts.times(one.strength(), part))))
                .or(with::spirit);
        return stock.joined(with, Math.min(1, part)).with(diluted(recipe, stock.ph().filter(any -> !worked.contains(recipe.stock()))), spirit);
    }

    private Optional<Double> part(String stock, Quantity wanted) {
        return strengths.of(stock).filter(own -> own.dimension() == wanted.dimension() && own.value() > 0)
                .map(own -> wanted.in(own.unit()) / own.value());
    }

    /** Limewater made weaker has a pH that is worked out; any other stock keeps its own, which is the careful side. */
    private Optional<Quantity> diluted(Recipe.Dilute recipe, Optional<Quantity> ofStock) {
        boolean lime = bench.source().solution(recipe.stock()).map(Solution::recipe)
                .filter(Recipe.Saturate.class::isInstance).isPresent();
        if (!lime || recipe.oneIn().isEmpty()) {
            return ofStock;
        }
        Outcome outcome = bench.ledger().outcome("lime-dilution", Inputs.none().with("one-in",
                Quantity.number(recipe.oneIn().get().value()), Job.CASE_FILE));
        return outcome instanceof Outcome.Worked worked
                ? Optional.ofNullable(worked.numbers().get("ph")).or(() -> ofStock) : ofStock;
    }

    @Override
    public Composition saturate(Recipe.Saturate recipe) {
        Composition solvent = of(recipe.in());
        Optional<Substance.Saturated> saturated = substanceOf(recipe.solid()).flatMap(Substance::saturated);
        double share = saturated.map(one -> one.share().highIn(Unit.PERCENT_BY_MASS) / 100).orElse(0.01);
        Composition made = of(recipe.solid()).joined(solvent, share)
                .with(saturated.map(Substance.Saturated::ph), solvent.spirit());
        return saturated.isPresent() ? made : made.lacking(unknown.saturated(recipe.solid()));
    }

    @Override
    public Composition adjust(Recipe.Adjust recipe) {
        Composition liquid = of(recipe.liquid());
        return of(recipe.with()).joined(liquid, TRACE).with(Optional.of(recipe.to()), liquid.spirit());
    }

    @Override
    public Composition parts(Recipe.Parts recipe) {
        List<Weighed> parts = new ArrayList<>();
        List<Composition.Spirit> burning = new ArrayList<>();
        for (Recipe.Portion portion : recipe.portions()) {
            Composition what = of(portion.of());
            what.spirit().ifPresent(burning::add);
            parts.add(0, weighed(what, portion.of(), portion.parts() / recipe.all(), recipe.byMass()));
        }
        return joined(parts).with(Optional.empty(), first(burning));
    }
}
