package org.benchleaf.model;

import java.util.List;
import java.util.Optional;
import org.benchleaf.message.Place;
import org.benchleaf.quantity.Quantity;

/**
 * The sheet itself.
 *
 * @param paper what paper, such as {@code wood pulp}; a key of the treatment matrix
 * @param features further keys of the matrix that apply, such as {@code coated}, {@code groundwood}
 * @param grammage mass per area
 * @param grammageMissing why there is none, where the case says so
 * @param thickness of one sheet
 * @param grain {@code along the height} or {@code along the width}; empty if unknown
 * @param sizing how it is sized, in words
 * @param state words about its strength, such as {@code brittle}
 */
public record PaperSupport(String paper, List<String> features, Optional<Quantity> grammage,
        Optional<MissingValue> grammageMissing, Optional<Quantity> thickness, Optional<String> grain,
        Optional<String> sizing, List<String> state, Place place) {

    public PaperSupport {
        features = List.copyOf(features);
        state = List.copyOf(state);
    }
}
