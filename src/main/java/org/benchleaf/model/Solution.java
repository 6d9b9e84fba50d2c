package org.benchleaf.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.benchleaf.message.Place;
import org.benchleaf.quantity.Quantity;

/**
 * Something that is prepared for this treatment.
 *
 * @param id how the file refers to it
 * @param name what the label says; the id if none is given
 * @param recipe how it is made
 * @param make how much to make; empty if it follows from what the steps use
 * @param least the smallest batch that can be made well
 * @param keeps how long it keeps
 * @param kept how it is stored, in words
 * @param readyIn how long before use it must be started (soaking, cooling, settling)
 * @param handsOn the part of {@code readyIn} that needs a person
 * @param madeOn the day it was made, once it was
 * @param how how to prepare it, sentences in order
 * @param source key of the recipe's source
 * @param lowReserve a test of it that shows that it does not burn as its pH suggests
 */
public record Solution(String id, String name, Recipe recipe, Optional<Quantity> make, Optional<Quantity> least,
        Optional<Quantity> keeps, Optional<String> kept, Optional<Quantity> readyIn, Optional<Quantity> handsOn,
        Optional<LocalDate> madeOn, List<String> how, Optional<String> source,
        Optional<LowReserve> lowReserve, Place place) {

    public Solution {
        how = List.copyOf(how);
    }
}
