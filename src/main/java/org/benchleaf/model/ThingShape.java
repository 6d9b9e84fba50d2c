package org.benchleaf.model;

import java.util.List;

/**
 * What a thing of the bench looks like, found by its name or its kind.
 *
 * @param shape the word of its drawing, such as {@code brush}
 * @param named words of which one stands in the name of such a thing, in lower case; empty if the kind alone tells
 * @param kinds of material; empty if the name alone tells
 */
public record ThingShape(String shape, List<String> named, List<String> kinds) {

    public ThingShape {
        named = List.copyOf(named);
        kinds = List.copyOf(kinds);
    }

    /** Whether a thing of that name and kind looks like it. */
    public boolean fits(String name, String kind) {
        return (kinds.isEmpty() || kinds.contains(kind)) && PublicCare.isTold(named, List.of(name));
    }
}
