package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/** Packs sorted words: each begins with a capital that tells how many letters it shares with the one before it (A is none). */
public final class WordList {

    private static final int MOST_SHARED = 25;

    private WordList() {
    }

    /** The words in one text, each once; they hold no capitals. */
    public static String packed(Collection<String> words) {
        StringBuilder packed = new StringBuilder();
        String before = "";
        for (String word : new TreeSet<>(words)) {
            int shared = shared(before, word);
            packed.append((char) ('A' + shared)).append(word, shared, word.length());
            before = word;
        }
        return packed.toString();
    }

    /** The words of such a text, sorted. */
    public static List<String> unpacked(String packed) {
        List<String> words = new ArrayList<>();
        String before = "";
        for (int at = 0; at < packed.length(); ) {
            int end = at + 1;
            while (end < packed.length() && !isMark(packed.charAt(end))) {
                end++;
            }
            before = before.substring(0, packed.charAt(at) - 'A') + packed.substring(at + 1, end);
            words.add(before);
            at = end;
        }
        return words;
    }

    private static boolean isMark(char letter) {
        return letter >= 'A' && letter <= 'Z';
    }

    private static int shared(String one, String other) {
        int most = Math.min(MOST_SHARED, Math.min(one.length(), other.length()));
        int shared = 0;
        while (shared < most && one.charAt(shared) == other.charAt(shared)) {
            shared++;
        }
        return shared;
    }
}
