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
 * @param ownWords the program's words for those of its texts for which a studio, that says the same in English, has others
 */
public record Phrases(String language, Map<String, String> words, Map<String, String> statements, Set<String> ofSums,
        Map<String, String> ownWords) {

    /** The program's texts as they are. */
    public static final Phrases ENGLISH = new Phrases("en", Map.of(), Map.of(), Set.of());

    public Phrases {
        words = Map.copyOf(words);
        statements = Map.copyOf(statements);
        ofSums = Set.copyOf(ofSums);
        ownWords = Map.copyOf(ownWords);
    }

    public Phrases(String language, Map<String, String> words, Map<String, String> statements, Set<String> ofSums) {
        this(language, words, statements, ofSums, Map.of());
    }

    /** These and the words of a studio, which go before in its own texts alone. */
    public Phrases and(String tag, Map<String, String> ofStudio) {
        Map<String, String> all = new HashMap<>(words);
        all.putAll(ofStudio);
        Map<String, String> own = new HashMap<>(words);
        own.keySet().retainAll(ofStudio.keySet());
        own.entrySet().removeIf(entry -> entry.getValue().equals(ofStudio.get(entry.getKey())));
        own.putAll(ownWords);
        return new Phrases(tag, all, statements, ofSums, own);
    }

    /** The words for a text of the program, such as a heading, a method or a label, whatever a studio says for the same English words. */
    public String ofProgram(String english) {
        return ownWords.getOrDefault(english, of(english));
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
        return Holes.fill(ofProgram(english), holes);
    }

    /** The official wording of a statement of hazard, if it is known. */
    Optional<String> statement(String code) {
        return Optional.ofNullable(statements.get(code));
    }
}
