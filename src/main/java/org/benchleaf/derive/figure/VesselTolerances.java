package org.benchleaf.derive.figure;

import java.util.Optional;
import org.benchleaf.model.Studio;
import org.benchleaf.quantity.Quantity;

/** How far the standards let a vessel lie off, where a studio states nothing of its own. */
@FunctionalInterface
public interface VesselTolerances {

    /** The tolerance of a vessel of that kind, size and class; empty where no standard is known. */
    Optional<Quantity> of(Studio.Vessel vessel);
}
