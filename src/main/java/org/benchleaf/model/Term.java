package org.benchleaf.model;

import java.util.List;
import java.util.Optional;
import org.benchleaf.message.Place;

/**
 * One entry of the glossary.
 *
 * @param term as it is looked up
 * @param also other forms that mean the same, such as a plural
 * @param plain what it means in plain words
 * @param more more for a trainee; may be empty
 * @param see other terms
 * @param source key of the source, if any
 * @param drawing what is drawn beside it, if anything
 */
public record Term(String id, String term, List<String> also, String plain, Optional<String> more, List<String> see,
        Optional<String> source, Optional<TermDrawing> drawing, Place place) {

    public Term {
        also = List.copyOf(also);
        see = List.copyOf(see);
    }
}
