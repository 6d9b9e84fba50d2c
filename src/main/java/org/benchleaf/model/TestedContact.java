package org.benchleaf.model;

import java.util.List;
import java.util.Optional;

/**
 * A liquid that touches a medium of a sheet for some time, and the longest test of that which passed, as the rules of the trade have it.
 *
 * @param steps ids of the steps that wet the medium with it before it dries, in order; other steps between them count too
 * @param drying id of the step between blotters, until whose first change the liquid still touches it; empty if another liquid follows
 * @param liquid id
 * @param test the longest test that passed
 */
public record TestedContact(List<String> steps, Optional<String> drying, String liquid, SpotTest test) {

    /** Finds the contacts of the baths of a case that were tested for a time. */
    @FunctionalInterface
    public interface Finder {
        List<TestedContact> of(TreatmentCase source, Library library, LiquidPh ph);
    }

    public TestedContact {
        steps = List.copyOf(steps);
    }
}
