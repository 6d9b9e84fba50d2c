package org.benchleaf.model;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.message.Holes;

/**
 * What the program itself says, in one language: its texts in English, each with its words in that language.
 *
 * <p>The English text is the key. One that was changed since has no words any more and stays English, which the page marks.
 *
 * @param language BCP 47 tag
 * @param words by the English text, with the same holes such as {@code {substance}}
 * @param statements the official wording of statements of hazard, by code; what is not among them stays English, for no such
 *     statement is translated freely
 * @param ofSums those of the words that the calculations say, which a page's script needs
 */
public record Phrases(String language, Map<String, String> words, Map<String, String> statements, Set<String> ofSums) {

    /** The program's texts as they are. */
    public static final Phrases ENGLISH = new Phrases("en", Map.of(), Map.of(), Set.of());

    public Phrases {
        words = Map.copyOf(words);
        statements = Map.copyOf(statements);
        ofSums = Set.copyOf(ofSums);
    }

    /** These and the words of a studio, which go before. */
    public Phrases and(String tag, Map<String, String> ofStudio) {
        Map<String, String> all = new HashMap<>(words);
        all.putAll(ofStudio);
        return new Phrases(tag, all, statements, ofSums);
    }

    /** The words for a text; the text itself where there are none. */
    public String of(String english) {
        return words.getOrDefault(english, english);
    }

    /**
     * The words for a text with its holes filled.
     *
     * @param holes name, value, name, value, …
     */
    public String say(String english, Object... holes) {
        return Holes.fill(of(english), holes);
    }

    /** The official wording of a statement of hazard, if it is known. */
    Optional<String> statement(String code) {
        return Optional.ofNullable(statements.get(code));
    }
}
