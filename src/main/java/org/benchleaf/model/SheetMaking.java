package org.benchleaf.model;

import java.util.List;
import java.util.Optional;
import org.benchleaf.message.Place;
import org.benchleaf.quantity.Quantity;

/**
 * How the practice sheets of a class come to be.
 *
 * @param bought whether they are bought ready
 * @param from what they are before anything is done to them, as it is bought; empty if the class does not say
 * @param delivery in how many working days that comes
 * @param steps ids of the steps of the case that they go through before the class, in its order
 * @param how what else is done to each, after these steps; empty if nothing is
 * @param takesEach how long that takes for one sheet
 * @param by who makes them
 */
public record SheetMaking(boolean bought, Optional<String> from, Optional<Integer> delivery, List<String> steps, Optional<String> how,
        Optional<Quantity> takesEach, ClassDay.Doer by, Place place) {

    public SheetMaking {
        steps = List.copyOf(steps);
    }

    /** Whether anything is done to them. */
    public boolean isWork() {
        return !steps.isEmpty() || how.isPresent();
    }
}
