package org.benchleaf.plan;

/**
 * Something of which a class has only so many.
 *
 * @param name as the class calls it
 * @param count how many there are, at least 1
 * @param kind who or what it is
 */
public record SharedThing(String name, int count, Kind kind) {

    /** Things stay when the studio closes; people do not. One more can be lent of things and staff, not of trainees. */
    public enum Kind { THING, STAFF, TRAINEE }

    public SharedThing {
        if (count < 1) {
            throw new IllegalArgumentException("no " + name);
        }
    }

    /** The same with another one. */
    SharedThing withOneMore() {
        return new SharedThing(name, count + 1, kind);
    }
}
