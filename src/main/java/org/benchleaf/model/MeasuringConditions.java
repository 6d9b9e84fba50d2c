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

    public MeasuringConditions {
        ph = Set.copyOf(ph);
    }

    /** A known method of which nothing but its words is told. */
    public static MeasuringConditions of(String method) {
        return new MeasuringConditions(Optional.empty(), PhKind.in(method), true, Optional.empty(), Optional.empty());
    }
}
