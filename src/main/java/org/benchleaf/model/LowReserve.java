package org.benchleaf.model;

import java.util.Optional;
import java.util.Set;
import org.benchleaf.quantity.Quantity;

/**
 * A test that shows that something strongly acid or alkaline holds little acid or alkali, so that it does not burn as its
 * pH suggests.
 *
 * @param rulesOut H codes that the test rules out
 * @param upTo the largest share by mass that was tested; empty where the tested mixture itself is meant
 * @param test what was tested and how, in words
 * @param source where the result was read
 */
public record LowReserve(Set<String> rulesOut, Optional<Quantity> upTo, String test, String source) {

    /** The H codes that a pH alone can give, and those that are taken on where only they are ruled out. */
    public static final Set<String> STATEMENTS = Set.of("H314", "H318", "H315", "H319");

    public LowReserve {
        rulesOut = Set.copyOf(rulesOut);
    }
}
