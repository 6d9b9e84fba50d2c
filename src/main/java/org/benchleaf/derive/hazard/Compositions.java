package org.benchleaf.derive.hazard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.derive.figure.AmountConversion;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.Densities;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.derive.figure.Strengths;
import org.benchleaf.model.Material;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Solution;
import org.benchleaf.model.StatedValue;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Works out what each prepared solution is made of, ingredient by ingredient. */
public final class Compositions implements Recipe.Kinds<Composition> {

    /** A stock that is added drop by drop leaves so little that only its presence counts. */
    private static final double NEUTRAL = 7;
    private static final MassShare TRACE = new MassShare(0, 1e-4);
    /** The lightest and the heaviest liquid of the table of substances but for mercury, g/mL. */
    private static final Spread ANY_LIQUID = new Spread(0.626, 1.63);
    /** How much lighter and heavier than water a solution in water is, for each share of what is not water: from memory,
     *  with 25 % ammonia (0.91), 37 % hydrochloric acid (1.18), 50 % sodium hydroxide (1.53) and 96 % sulfuric acid (1.84) inside. */
    private static final double LIGHTER_BY = 0.4;
    private static final double HEAVIER_BY = 1.1;
    private static final String WATER = "water";

    /** From this share of other things on, a liquid is no solution in water. */
    private static final double MOSTLY = 0.5;

    private final Bench bench;
    private final Strengths strengths;
    private final Densities densities;
    private final UnknownWords unknown;
    private final BoughtMaterials bought;
    private final Map<String, Composition> known = new HashMap<>();
    /** What has its pH from the equilibrium: diluted, it is asked again. */
    private final Set<String> worked = new HashSet<>();

    public Compositions(Bench bench) {
        this.bench = bench;
        this.strengths = new Strengths(bench);
        this.densities = new Densities(bench, strengths);
        this.unknown = new UnknownWords(bench.library().reference());
        this.bought = new BoughtMaterials(bench.library().reference());
    }

    /** Whether at least that share of it by mass is known to be this substance. */
    public boolean holds(String id, String substance, Quantity share) {
        return of(id).least(substance) * 100 >= share.in(Unit.PERCENT);
    }

    /** What a solution or material is made of. */
    public Composition of(String id) {
        Composition done = known.get(id);
        if (done != null) {
            return done;
        }
        // Against circles, which are told elsewhere.
        known.put(id, Composition.unknown(unknown.part(id)));
        if (MissingValue.read(id).isPresent()) {
            known.put(id, Composition.unknown(unknown.of("composition", "liquid-unrecorded")));
            return known.get(id);
        }
        Composition made = bench.source().solution(id).map(Solution::recipe).map(recipe -> recipe.ask(this))
                .orElseGet(() -> bench.material(id).map(bought::of).map(new MixturePh(bench.library().reference())::compared)
                        .orElseGet(() -> Composition.unknown(unknown.part(id))));
        boolean saturated = bench.source().solution(id).map(Solution::recipe).filter(Recipe.Saturate.class::isInstance).isPresent();
        boolean stated = made.ph().isPresent() && !saturated;
        Composition told = new MixturePh(bench.library().reference()).told(made);
        if (!stated) {
            worked.add(id);
        }
        Composition tested = told.tested(bench.source().solution(id).flatMap(Solution::lowReserve));
        known.put(id, tested);
        return tested;
    }

    private Optional<Substance> substance(String key) {
        return Optional.ofNullable(bench.library().reference().substances().get(key));
    }

    /** The row of an ingredient, which is named as a substance or as a material. */
    private Optional<Substance> substanceOf(String id) {
        return substance(id).or(() -> bench.material(id).flatMap(Material::substance).flatMap(this::substance));
    }

    @Override
    public Composition mix(Recipe.Mix recipe) {
        List<Weighed> parts = new ArrayList<>();
        MassShare poured = MassShare.NONE;
        for (Recipe.Share share : recipe.shares()) {
            Weighed part = strengths.isEthanolAndWater(recipe) ? ofEthanol(share) : part(share, recipe.byMass());
            poured = poured.plus(part.amount());
            parts.add(part);
        }
        boolean byMass = recipe.byMass() || strengths.isEthanolAndWater(recipe);
        parts.add(weighed(of(recipe.rest()), recipe.rest(), poured.rest(), byMass));
        boolean bare = recipe.shares().stream().anyMatch(share -> share.strength().dimension() == Dimension.SHARE);
        return joined(bare ? parts.stream().map(Weighed::inAnyKind).toList() : parts).with(Optional.empty(), burning(recipe));
    }

    /**
     * Something that is poured.
     *
     * @param what it is made of
     * @param amount its share of the whole, as it is poured
     * @param density by which that share becomes a mass; 1 where it is a mass
     */
    private record Weighed(Composition what, MassShare amount, Spread density) {

        /** The same where it is not known whether the share counts mass or volume. */
        Weighed inAnyKind() {
            return new Weighed(what, amount, new Spread(Math.min(1, density.least()), Math.max(1, density.most())));
        }

        double least() {
            return amount.least() * density.least();
        }

        double most() {
            return amount.most() * density.most();
        }

        /** Its share by mass beside what the others weigh. */
        MassShare share(double othersLeast, double othersMost) {
            return new MassShare(least() == 0 ? 0 : least() / (least() + othersMost),
                    most() == 0 ? 0 : most() / (most() + othersLeast));
        }
    }

    /** A density in g/mL, the smallest and the largest that it can be. */
    private record Spread(double least, double most) {

        static final Spread ONE = new Spread(1, 1);
    }

    private Weighed weighed(Composition what, String id, MassShare amount, boolean byMass) {
        if (byMass) {
            return new Weighed(what, amount, Spread.ONE);
        }
        Densities.Density density = densities.of(id);
        boolean lacking = density.value().isEmpty() && what.unknown().isEmpty();
        return new Weighed(lacking ? what.lacking(unknown.shareByMass(id, density.why())) : what, amount,
                spread(density, what));
    }

    /** The density where it is known, else the ends between which it must lie: near that of water where there is much of it. */
    private static Spread spread(Densities.Density density, Composition what) {
        double other = 1 - what.least(WATER);
        return density.value().map(known -> known.in(Unit.KILOGRAM_PER_CUBIC_METRE) / 1000)
                .map(known -> new Spread(known, known))
                .orElseGet(() -> other > MOSTLY ? ANY_LIQUID : new Spread(1 - LIGHTER_BY * other, 1 + HEAVIER_BY * other));
    }

    /** Ethanol and water by their table: the share by mass of the ethanol itself, and the rest of it water. */
    private Weighed ofEthanol(Recipe.Share share) {
        Composition stock = of(share.from());
        Optional<Substance> ethanol = substance("ethanol");
        Composition pure = ethanol.map(row -> pure(row, stock)).orElse(stock);
        return new Weighed(pure, ethanol.map(row -> BoughtMaterials.share(row, share.strength())).orElse(MassShare.WHOLE), Spread.ONE);
    }

    private Weighed part(Recipe.Share share, boolean byMass) {
        Composition stock = of(share.from());
        Optional<Quantity> strength = strengths.of(share.from(), share.liquid())
                .filter(one -> one.dimension() == share.strength().dimension() && one.value() > 0);
        double scale = share.strength().unit().factor();
        MassShare wanted = new MassShare(share.strength().low() * scale, share.strength().high() * scale);
        if (share.asItIs() || strength.isPresent()) {
            double pure = share.asItIs() ? 1 : strength.get().value() * strength.get().unit().factor();
            return weighed(stock, share.from(), new MassShare(wanted.least() / pure, wanted.most() / pure), byMass);
        }
        Optional<Substance> liquid = substanceOf(share.liquid()).or(() -> substanceOf(share.from()));
        Composition pure = liquid.map(row -> pure(row, stock)).orElseGet(() -> stock.lacking(unknown.part(share.liquid())));
        return weighed(pure, share.from(), wanted, byMass);
    }

    /** A substance by itself, with what is not known of the stock that it comes from. */
    private static Composition pure(Substance substance, Composition stock) {
        return new Composition(Map.of(substance.key(), MassShare.WHOLE), Optional.empty(), Optional.empty(), stock.unknown());
    }

    private static Composition joined(List<Weighed> parts) {
        List<MassShare> shares = new ArrayList<>();
        for (Weighed one : parts) {
            List<Weighed> others = parts.stream().filter(other -> other != one).toList();
            shares.add(one.share(others.stream().mapToDouble(Weighed::least).sum(),
                    others.stream().mapToDouble(Weighed::most).sum()));
        }
        return Composition.joined(parts.stream().map(Weighed::what).toList(), shares);
    }

    /** The flammable liquid of a mixture. Several count as the one that burns first, undiluted, on the careful side. */
    private Optional<Composition.Spirit> burning(Recipe.Mix recipe) {
        List<Composition.Spirit> several = new ArrayList<>();
        for (Recipe.Share share : recipe.shares()) {
            (share.asItIs() ? Optional.<Substance>empty() : substanceOf(share.liquid()).or(() -> substanceOf(share.from())))
                    .flatMap(row -> BoughtMaterials.spirit(row, BoughtMaterials.byVolumeOrPure(Optional.of(share.strength()))))
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
        MassShare share = substanceOf(recipe.solid()).map(row -> BoughtMaterials.share(row, recipe.strength()))
                .orElse(new MassShare(0, 1));
        // What is dissolved in a volume may be lighter or heavier than it is taken to be; of the solvent the most counts.
        boolean inVolume = recipe.strength().dimension() != Dimension.MASS_FRACTION;
        MassShare rest = new MassShare(share.rest().least(), 1 - share.least()
                * (inVolume ? BoughtMaterials.LIGHTEST / ANY_LIQUID.most() : 1));
        return Composition.joined(List.of(solid, solvent), List.of(share, rest))
                .with(solid.ph().filter(any -> isNeutral(solvent)), solvent.spirit().or(solid::spirit));
    }

    @Override
    public Composition dilute(Recipe.Dilute recipe) {
        Composition stock = of(recipe.stock());
        Composition with = of(recipe.with());
        MassShare part = recipe.oneIn().map(parts -> new MassShare(1 / parts.high(), 1 / parts.low()))
                .or(() -> recipe.strength().flatMap(wanted -> part(recipe.stock(), wanted)))
                .orElse(new MassShare(0, 1));
        Optional<Composition.Spirit> spirit = stock.spirit().map(one -> recipe.strength()
                .filter(wanted -> wanted.dimension() == Dimension.VOLUME_FRACTION)
                .map(wanted -> new Composition.Spirit(one.substance(), wanted))
                .orElseGet(() -> new Composition.Spirit(one.substance(), AmountConversion.times(one.strength(), part.most()))))
                .or(with::spirit);
        boolean byMass = recipe.strength().filter(wanted -> wanted.dimension() == Dimension.MASS_FRACTION).isPresent();
        Composition made = joined(List.of(poured(stock, recipe.stock(), part, byMass),
                poured(with, recipe.with(), part.rest(), byMass)));
        // A stated pH is kept, the careful side, unless the other liquid acts on it.
        return made.with(stock.ph().filter(any -> !worked.contains(recipe.stock()) && isNeutral(with)), spirit);
    }

    /** As {@link #weighed}, but what is thinned needs no density to be known: the ends of what it can be are enough. */
    private Weighed poured(Composition what, String id, MassShare amount, boolean byMass) {
        return new Weighed(what, amount, byMass ? Spread.ONE : spread(densities.of(id), what));
    }

    private Optional<MassShare> part(String stock, Quantity wanted) {
        return strengths.of(stock).filter(own -> own.dimension() == wanted.dimension() && own.value() > 0)
                .filter(own -> own.dimension() != Dimension.SHARE)
                .map(own -> new MassShare(wanted.to(own.unit()).low() / own.value(), wanted.to(own.unit()).high() / own.value()));
    }

    private boolean isNeutral(Composition liquid) {
        return liquid.isNeutral(bench.library().reference());
    }

    @Override
    public Composition saturate(Recipe.Saturate recipe) {
        Composition solvent = of(recipe.in());
        // What is known of saturation is known of water alone.
        Optional<Substance.Saturated> saturated = substanceOf(recipe.solid()).flatMap(Substance::saturated)
                .filter(any -> solvent.shares().keySet().equals(Set.of(WATER)) && isNeutral(solvent));
        MassShare share = saturated.map(one -> new MassShare(one.share().lowIn(Unit.PERCENT_BY_MASS) / 100,
                one.share().highIn(Unit.PERCENT_BY_MASS) / 100)).orElse(new MassShare(0, 1));
        Composition made = of(recipe.solid()).joined(solvent, share)
                .with(saturated.map(Substance.Saturated::ph), solvent.spirit());
        return saturated.isPresent() ? made : made.lacking(unknown.saturated(recipe.solid()));
    }

    @Override
    public Composition adjust(Recipe.Adjust recipe) {
        Composition liquid = of(recipe.liquid());
        Composition with = of(recipe.with());
        boolean thinned = isNeutral(with) && reaches(liquid, recipe.to());
        Composition made = (thinned ? inAnyShare(recipe.liquid(), recipe.with()) : with.joined(liquid, TRACE))
                .with(recipe.to().forSums(), liquid.spirit());
        String to = Reading.of(recipe.to().value());
        if (isNeutral(with) && !thinned) {
            return made.lacking(unknown.of("ph", "adjust-idle", "with", recipe.with(), "to", to));
        }
        if (recipe.to().forSums().isEmpty()) {
            boolean below = recipe.to().form() == StatedValue.Form.LESS_THAN;
            return made.lacking(unknown.of("ph", below ? "adjust-below" : "adjust-above", "to", to));
        }
        return liquid.ph().filter(any -> !thinned).filter(bench.library().reference().limits()::isExtreme).map(from ->
                made.lacking(unknown.of("ph", "adjust-far", "liquid", recipe.liquid(), "from", Reading.of(from), "to", to))).orElse(made);
    }

    /** Whether water, more and more of it, brings an acid or alkali to a pH: it never goes beyond its own. */
    private boolean reaches(Composition stock, StatedValue to) {
        if (isNeutral(stock) || stock.ph().isEmpty() || to.forSums().isEmpty()) {
            return !isNeutral(stock);
        }
        Quantity own = stock.ph().get();
        Quantity wanted = to.forSums().get();
        return own.value() > NEUTRAL ? wanted.low() <= own.high() : wanted.high() >= own.low();
    }

    private Composition inAnyShare(String stock, String with) {
        MassShare any = new MassShare(0, 1);
        return joined(List.of(poured(of(stock), stock, any, false), poured(of(with), with, any.rest(), false)));
    }

    @Override
    public Composition untold(Recipe.Untold recipe) {
        List<Composition> what = recipe.ingredients().stream().map(this::of).toList();
        List<Composition.Spirit> burning = what.stream().map(Composition::spirit).flatMap(Optional::stream).toList();
        return Composition.joined(what, what.stream().map(any -> new MassShare(0, 1)).toList()).with(Optional.empty(), first(burning))
                .lacking(unknown.of("composition", recipe.portions().isEmpty() ? "proportions-unrecorded" : "basis-unrecorded",
                        "part", recipe.id()));
    }

    @Override
    public Composition parts(Recipe.Parts recipe) {
        List<Weighed> parts = new ArrayList<>();
        List<Composition.Spirit> burning = new ArrayList<>();
        for (Recipe.Portion portion : recipe.portions()) {
            Composition what = of(portion.of());
            what.spirit().ifPresent(burning::add);
            parts.add(weighed(what, portion.of(), MassShare.of(portion.parts() / recipe.all()), recipe.byMass()));
        }
        return joined(parts).with(Optional.empty(), first(burning));
    }
}
