package org.benchleaf.model;

import java.util.Set;

/**
 * What a result measures.
 *
 * @param word the word of the case file, by which figures, files and pages are named and rules ask, such as {@code pH}
 * @param told the same in the language in which the case is told
 */
public record MeasureName(String word, String told) {

    /** Those for which every language of the program has its own word. */
    private static final Set<String> WORDED = Set.of("pH", "colour", "size", "reserve");

    /** As the case file has it. */
    public static MeasureName of(String word) {
        return new MeasureName(word, word);
    }

    /** Whether a translated case needs no word of its own for it. */
    public boolean isWorded() {
        return WORDED.contains(word);
    }

    /** Whether it is the one of that word, in small or capital letters. */
    public boolean is(String other) {
        return word.equalsIgnoreCase(other);
    }
}
