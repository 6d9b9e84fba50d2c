package org.benchleaf.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.Place;

/**
 * The words of a case in another language; numbers come from the case itself.
 *
 * @param language BCP 47 tag
 * @param texts the texts that it has, by their addresses (see {@link CaseTexts})
 * @param outdated addresses of those that were made from words which the case has no more
 * @param marks of the words that they were made from, by address ({@link CaseTexts#mark}); not every text has one
 * @param of how many texts the case has
 * @param story the Markdown text, section by section
 * @param phrases what the program itself says in that language
 */
public record Translation(String language, Map<String, String> texts, List<String> outdated,
        Map<String, String> marks, int of, Story story, Phrases phrases, Place place) {

    public Translation {
        texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
        outdated = List.copyOf(outdated);
        marks = Collections.unmodifiableMap(new LinkedHashMap<>(marks));
    }

    /** The text at an address, if it is there and of the words that the case has now. */
    public Optional<String> text(String address) {
        return Optional.ofNullable(texts.get(address)).filter(text -> !outdated.contains(address));
    }
}
