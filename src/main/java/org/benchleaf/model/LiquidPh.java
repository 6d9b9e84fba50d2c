package org.benchleaf.model;

import java.util.Optional;
import java.util.function.Function;
import org.benchleaf.quantity.Quantity;

/** Works out the pH of the liquids of a case from what they are made of. */
@FunctionalInterface
public interface LiquidPh {

    /** The pH by the id of a solution or material; empty where a part of it that bears on the pH is not known. */
    Function<String, Optional<Quantity>> of(TreatmentCase source);
}
