package org.benchleaf.derive;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;

/**
 * What is in a liquid or solid, as far as its hazards go; where a share is uncertain, the larger one.
 *
 * @param shares substances of the table with their share by mass, from 0 to 1
 * @param ph the pH, if it is known; its ends where it is not exact
 * @param spirit the flammable liquid in it, with its share by volume
 * @param unknown what is not known of its parts and shares
 */
record Composition(Map<String, Double> shares, Optional<Quantity> ph, Optional<Spirit> spirit,
        List<Hazards.Unknown> unknown) {

    Composition {
        unknown = List.copyOf(unknown);
    }

    /** The flammable liquid of a mixture: its key in the table and its strength by volume. */
    record Spirit(String substance, Quantity strength) {
    }

    /** Something of which nothing is known. */
    static Composition unknown(Hazards.Unknown why) {
        return new Composition(Map.of(), Optional.empty(), Optional.empty(), List.of(why));
    }

    /** The rows of its parts. */
    List<Substance> substances(Reference reference) {
        return shares.keySet().stream().map(reference.substances()::get).filter(Objects::nonNull).toList();
    }

    /** The same with other things that are known of the mixture as a whole. */
    Composition with(Optional<Quantity> itsPh, Optional<Spirit> itsSpirit) {
        return new Composition(shares, itsPh, itsSpirit, unknown);
    }

    /** The same with one thing more that is not known. */
    Composition lacking(Hazards.Unknown what) {
        Set<Hazards.Unknown> all = new LinkedHashSet<>(unknown);
        all.add(what);
        return new Composition(shares, ph, spirit, List.copyOf(all));
    }

    /** The two put together, of this one so much by mass; the pH and the flammable liquid of the two are left out. */
    Composition joined(Composition other, double share) {
        Map<String, Double> mixed = new LinkedHashMap<>();
        shares.forEach((substance, part) -> mixed.merge(substance, part * share, Double::sum));
        other.shares.forEach((substance, part) -> mixed.merge(substance, part * (1 - share), Double::sum));
        Set<Hazards.Unknown> all = new LinkedHashSet<>(unknown);
        all.addAll(other.unknown);
        return new Composition(mixed, Optional.empty(), Optional.empty(), List.copyOf(all));
    }
}
