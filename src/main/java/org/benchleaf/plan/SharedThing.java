package org.benchleaf.plan;

/**
 * Something of which a class has only so many.
 *
 * @param name as the class calls it
 * @param count how many there are, at least 1
 * @param kind who or what it is
 */
public record SharedThing(String name, int count, Kind kind) {

    /** Things and turns stay when the studio closes; people do not. One more can be lent of things and staff alone. */
    public enum Kind {
        THING, STAFF, TRAINEE, TURN;

        /** Whether it is somebody. */
        public boolean isPerson() {
            return this == STAFF || this == TRAINEE;
        }

        /** Whether another one would be a help that can be asked for. */
        public boolean canBeLent() {
            return this == THING || this == STAFF;
        }
    }

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
