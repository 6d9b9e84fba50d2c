package org.benchleaf.model;

import java.util.Optional;
import org.benchleaf.message.Place;

/**
 * Where a publication tells something of a case, and in which words.
 *
 * @param source key of the publication
 * @param where page, table or figure in it
 * @param words its own words, letter for letter
 */
public record Passage(String source, Optional<String> where, Optional<String> words, Place place) {
}
