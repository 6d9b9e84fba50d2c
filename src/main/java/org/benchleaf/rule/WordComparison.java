package org.benchleaf.rule;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.benchleaf.model.MissingValue;

/** Compares words as people write them: letter case, hyphens and what stands around them do not matter. */
final class WordComparison {

    private static final List<String> NOT_KNOWN = List.of("", "?", "-", "unknown", "none given");

    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}()]+");

    private WordComparison() {
    }

    /** Whether the text holds the wanted word, or words in a row, as whole words. */
    static boolean holds(String text, String wanted) {
        return (" " + plain(text) + " ").contains(" " + plain(wanted) + " ");
    }

    /** Whether a text says anything at all. */
    static boolean known(String text) {
        String word = text.strip().toLowerCase(Locale.ROOT);
        return !NOT_KNOWN.contains(word) && MissingValue.read(word).isEmpty();
    }

    private static String plain(String text) {
        return BETWEEN_WORDS.matcher(text.toLowerCase(Locale.ROOT)).replaceAll(" ").strip();
    }
}
