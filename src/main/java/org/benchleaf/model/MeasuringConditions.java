package org.benchleaf.model;

import java.util.Optional;
import java.util.Set;
import org.benchleaf.quantity.Quantity;

/**
 * How numbers were read, which decides what may be made of them.
 *
 * @param step the smallest step that the method or its instrument tells, in the unit of the readings
 * @param ph what kinds of pH measurement it is; empty for other measures and where nothing tells
 * @param methodKnown whether anybody recorded the method
 * @param methodAfter the method of the readings after, where it is another than before
 * @param aged how the paper was aged before it was measured, if it was
 */
public record MeasuringConditions(Optional<Quantity> step, Set<PhKind> ph, boolean methodKnown,
        Optional<String> methodAfter, Optional<String> aged) {

    /** Why the readings before and after cannot be set against each other. */
    public enum Apart {
        /** Nobody recorded how they were read. */
        METHOD_NOT_KNOWN("method-not-known"),
        /** Nobody recorded how those after were read. */
        METHOD_AFTER_NOT_KNOWN("method-after-not-known"),
        /** They were read by different methods. */
        METHODS_DIFFER("methods-differ");

        private final String word;

        Apart(String word) {
            this.word = word;
        }

        /** The word under which pages tell it. */
        public String word() {
            return word;
        }
    }

    public MeasuringConditions {
        ph = Set.copyOf(ph);
    }

    /** Why the readings before and after cannot be set against each other; empty where one method read both. */
    public Optional<Apart> apart() {
        if (!methodKnown) {
            return Optional.of(Apart.METHOD_NOT_KNOWN);
        }
        return methodAfter.map(after -> MissingValue.read(after).isPresent() ? Apart.METHOD_AFTER_NOT_KNOWN : Apart.METHODS_DIFFER);
    }

    /** A known method of which nothing but its words is told. */
    public static MeasuringConditions of(String method) {
        return new MeasuringConditions(Optional.empty(), PhKind.in(method), true, Optional.empty(), Optional.empty());
    }
}
