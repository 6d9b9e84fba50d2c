package org.benchleaf.derive.hazard;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.model.LowReserve;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;

/**
 * What is in a liquid or solid, as far as its hazards go.
 *
 * @param shares substances of the table with their share by mass
 * @param ph the pH, if it is known; its ends where it is not exact
 * @param spirit the flammable liquid in it, with its share by volume
 * @param lowReserve a test of just this that shows that it does not burn as its pH suggests
 * @param unknown what is not known of its parts and shares
 */
public record Composition(Map<String, MassShare> shares, Optional<Quantity> ph, Optional<Spirit> spirit,
        Optional<LowReserve> lowReserve, List<Hazards.Unknown> unknown) {

    private static final String SOLID = "solid";
    private static final double HALF = 0.5;

    /** Something of which no test is known. */
    Composition(Map<String, MassShare> shares, Optional<Quantity> ph, Optional<Spirit> spirit,
            List<Hazards.Unknown> unknown) {
        this(shares, ph, spirit, Optional.empty(), unknown);
    }

    public Composition {
        unknown = List.copyOf(unknown);
    }

    /** The flammable liquid of a mixture: its key in the table and its strength by volume. */
    record Spirit(String substance, Quantity strength) {
    }

    /** Something of which nothing is known. */
    static Composition unknown(Hazards.Unknown why) {
        return new Composition(Map.of(), Optional.empty(), Optional.empty(), List.of(why));
    }

    /** The largest share that a substance can have; 0 where it is not in it. */
    double most(String substance) {
        return shares.getOrDefault(substance, MassShare.NONE).most();
    }

    /** The smallest share that a substance can have; 0 where it is not in it. */
    double least(String substance) {
        return shares.getOrDefault(substance, MassShare.NONE).least();
    }

    /** The rows of its parts. */
    List<Substance> substances(Reference reference) {
        return shares.keySet().stream().map(reference.substances()::get).filter(Objects::nonNull).toList();
    }

    /** The words by which cautions know the making of a solution, and that something is taken dry for it. */
    static Set<String> preparing(Stream<Composition> ingredients, Reference reference) {
        return ingredients.anyMatch(one -> one.isDry(reference)) ? Set.of("preparation", "powder") : Set.of("preparation");
    }

    /** The same with other things that are known of the mixture as a whole. */
    Composition with(Optional<Quantity> itsPh, Optional<Spirit> itsSpirit) {
        return new Composition(shares, itsPh, itsSpirit, lowReserve, unknown);
    }

    /** The same with a test of its reserve. */
    Composition tested(Optional<LowReserve> test) {
        return new Composition(shares, ph, spirit, test, unknown);
    }

    /** Whether it is handled dry: at least half of it by mass is a solid. */
    boolean isDry(Reference reference) {
        return substances(reference).stream().filter(part -> part.form().equals(SOLID)).mapToDouble(part -> most(part.key())).sum()
                >= HALF;
    }

    /** Whether it is all known and no part of it acts on the pH of what it is mixed with. */
    boolean isNeutral(Reference reference) {
        return unknown.isEmpty() && substances(reference).stream().allMatch(part -> part.acidity()
                .filter(acidity -> acidity.is() == Substance.Acidity.Kind.NEUTRAL).isPresent());
    }

    /** The same with one thing more that is not known. */
    Composition lacking(Hazards.Unknown what) {
        Set<Hazards.Unknown> all = new LinkedHashSet<>(unknown);
        all.add(what);
        return new Composition(shares, ph, spirit, lowReserve, List.copyOf(all));
    }

    /** The two put together, of this one so much by mass; the pH and the flammable liquid of the two are left out. */
    Composition joined(Composition other, MassShare share) {
        return joined(List.of(this, other), List.of(share, share.rest()));
    }

    /** Several put together, of each its share by mass; the pH and the flammable liquid of each are left out. */
    static Composition joined(List<Composition> parts, List<MassShare> by) {
        Map<String, MassShare> mixed = new LinkedHashMap<>();
        Set<Hazards.Unknown> all = new LinkedHashSet<>();
        for (int i = 0; i < parts.size(); i++) {
            MassShare share = by.get(i);
            parts.get(i).shares.forEach((substance, part) ->
                    mixed.merge(substance, part.times(share), MassShare::plus));
            all.addAll(parts.get(i).unknown);
        }
        return new Composition(mixed, Optional.empty(), Optional.empty(), List.copyOf(all));
    }
}
