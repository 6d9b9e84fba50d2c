package org.benchleaf.derive.hazard;

import java.util.Set;

/**
 * Two substances that must not meet and that a retold case brings together, as its publication tells it.
 *
 * @param where how they come together
 * @param one name of the first substance, as it stands in a sentence
 * @param other name of the second
 * @param gives what comes of it, in a few words
 * @param why what happens and what to do
 * @param things ids of what brings either of them
 */
public record Meeting(Where where, String one, String other, String gives, String why, Set<String> things) {

    public Meeting {
        things = Set.copyOf(things);
    }

    /** How two substances come together. */
    public enum Where {
        /** In one step. */
        STEP,
        /** In one solution. */
        SOLUTION,
        /** In the sheet: one was left there by a step before. */
        SHEET,
        /** In the bottle in which waste of one kind is collected. */
        WASTE
    }
}
