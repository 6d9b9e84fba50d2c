package org.benchleaf.plan;

/**
 * What a station takes of a shared thing, and from when to when.
 *
 * @param thing its place in the list of things
 * @param amount how many at once, at least 1
 * @param first part with whose begin it is taken
 * @param last part with whose end it is given back; the same as {@code first}, or a later one
 */
public record Claim(int thing, int amount, int first, int last) {

    public Claim {
        if (thing < 0 || amount < 1 || first < 0 || last < first) {
            throw new IllegalArgumentException("claim of " + amount + " of thing " + thing + " from part " + first
                    + " to part " + last);
        }
    }

    boolean overlaps(Claim other) {
        return thing == other.thing && first <= other.last && other.first <= last;
    }
}
