package org.benchleaf.privacy;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Finds many words in one pass over a text, by the hash of their first letters, rolled along the text; in a second pass
 * those that are shorter than that.
 *
 * <p>The trees that are usual for this look into a map at every letter, and take hundreds of megabytes for the private
 * values of ten thousand cases. May be used from several threads.
 */
final class WordFinder {

    private static final int HEAD = 8;

    private final List<Heads> all;

    /** Makes ready to find these words, of which none is empty. */
    WordFinder(Collection<String> words) {
        Map<Boolean, List<String>> byLength = words.stream().distinct()
                .collect(Collectors.partitioningBy(word -> word.length() < HEAD));
        this.all = byLength.values().stream().filter(some -> !some.isEmpty()).map(Heads::new).toList();
    }

    /** Is told of a word and where it begins. */
    interface Found {
        void at(int start, String word);
    }

    /** Tells every place of every word; words may overlap. */
    void find(String text, Found found) {
        all.forEach(heads -> heads.find(text, found));
    }

    /** Words by as many of their first letters as the shortest has, eight at most. */
    private static final class Heads {

        private static final int BASE = 31;
        /** So many that chance seldom strikes one; no more than a processor keeps at hand. */
        private static final int MARKS_PER_HEAD = 128;
        private static final int MOST_MARKS = 1 << 18;

        private final Map<Integer, List<String>> byHead = new HashMap<>();
        /** Marks the heads that there are, so that the others, nearly all, are passed over without a look into the map. */
        private final boolean[] heads;
        private final int head;
        private final int highest;

        Heads(List<String> words) {
            this.head = words.stream().mapToInt(word -> Math.min(word.length(), HEAD)).min().orElseThrow();
            words.forEach(word -> byHead.computeIfAbsent(word.substring(0, head).hashCode(),
                    hash -> new ArrayList<>(1)).add(word));
            this.heads = new boolean[Integer.highestOneBit(Math.min(MOST_MARKS, byHead.size() * MARKS_PER_HEAD))];
            byHead.keySet().forEach(hash -> heads[mark(hash)] = true);
            int power = 1;
            for (int i = 1; i < head; i++) {
                power *= BASE;
            }
            this.highest = power;
        }

        void find(String text, Found found) {
            char[] letters = text.toCharArray();
            int hash = 0;
            for (int at = 0; at < head - 1 && at < letters.length; at++) {
                hash = hash * BASE + letters[at];
            }
            for (int at = head - 1; at < letters.length; at++) {
                hash = hash * BASE + letters[at];
                int start = at - head + 1;
                if (heads[mark(hash)]) {
                    compare(hash, text, start, found);
                }
                hash -= letters[start] * highest;
            }
        }

        private void compare(int hash, String text, int start, Found found) {
            for (String word : byHead.getOrDefault(hash, List.of())) {
                if (text.startsWith(word, start)) {
                    found.at(start, word);
                }
            }
        }

        private int mark(int hash) {
            return (hash ^ hash >>> 14) & heads.length - 1;
        }
    }
}
