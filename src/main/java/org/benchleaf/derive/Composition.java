package org.benchleaf.derive;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.quantity.Quantity;

/**
 * What is in a liquid or solid, as far as its hazards go; where a share is uncertain, the larger one.
 *
 * @param shares substances of the table with their share by mass, from 0 to 1
 * @param ph the pH, if it is known; its ends where it is not exact
 * @param spirit the flammable liquid in it, with its share by volume
 */
record Composition(Map<String, Double> shares, Optional<Quantity> ph, Optional<Spirit> spirit) {

    /** The flammable liquid of a mixture: its key in the table and its strength by volume. */
    record Spirit(String substance, Quantity strength) {
    }

    static Composition unknown() {
        return new Composition(Map.of(), Optional.empty(), Optional.empty());
    }

    /** The two put together, of this one so much by mass. */
    Map<String, Double> sharesWith(Composition other, double share) {
        Map<String, Double> mixed = new LinkedHashMap<>();
        shares.forEach((substance, part) -> mixed.merge(substance, part * share, Double::sum));
        other.shares.forEach((substance, part) -> mixed.merge(substance, part * (1 - share), Double::sum));
        return mixed;
    }
}
