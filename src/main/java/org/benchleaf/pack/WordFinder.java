package org.benchleaf.pack;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;

/**
 * Finds many words in one pass over a text, by the hash of their first letters, rolled along the text.
 *
 * <p>The trees that are usual for this look into a map at every letter, and take hundreds of megabytes for the private
 * values of ten thousand cases. May be used from several threads.
 */
final class WordFinder {

    private static final int LONGEST_HEAD = 8;
    private static final int BASE = 31;
    private static final int MARKS = 1 << 18;

    private final Map<Integer, List<String>> byHead = new HashMap<>();
    /** Marks the heads that there are, so that the others, nearly all, are passed over without a look into the map. */
    private final BitSet heads = new BitSet();
    private final int head;
    private final int highest;

    /** Makes ready to find these words, of which none is empty. */
    WordFinder(Collection<String> words) {
        this.head = words.stream().mapToInt(String::length).min().stream().map(shortest ->
                Math.min(shortest, LONGEST_HEAD)).findFirst().orElse(1);
        new HashSet<>(words).forEach(word -> byHead.computeIfAbsent(word.substring(0, head).hashCode(),
                hash -> new ArrayList<>(1)).add(word));
        byHead.keySet().forEach(hash -> heads.set(mark(hash)));
        int power = 1;
        for (int i = 1; i < head; i++) {
            power *= BASE;
        }
        this.highest = power;
    }

    /** Is told of a word and where it begins. */
    interface Found {
        void at(int start, String word);
    }

    /** Tells every place of every word, in the order of the text; words may overlap. */
    void find(String text, Found found) {
        int hash = 0;
        for (int at = 0; at < text.length(); at++) {
            hash = hash * BASE + text.charAt(at);
            int start = at - head + 1;
            if (start >= 0) {
                if (heads.get(mark(hash))) {
                    compare(hash, text, start, found);
                }
                hash -= text.charAt(start) * highest;
            }
        }
    }

    private void compare(int hash, String text, int start, Found found) {
        for (String word : byHead.getOrDefault(hash, List.of())) {
            if (text.startsWith(word, start)) {
                found.at(start, word);
            }
        }
    }

    private static int mark(int hash) {
        return (hash ^ hash >>> 14) & MARKS - 1;
    }
}
