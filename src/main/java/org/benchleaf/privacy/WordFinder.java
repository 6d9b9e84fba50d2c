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

    /** Tells every place of every word in the letters of a text; words may overlap. */
    void find(char[] letters, Found found) {
        all.forEach(heads -> heads.find(letters, found));
    }

    /** Words by as many of their first letters as the shortest has, eight at most. */
    private static final class Heads {

        private static final int BASE = 31;
        /** So many that chance seldom strikes one; no more than a processor keeps at hand. */
        private static final int MARKS_PER_HEAD = 128;
        private static final int MOST_MARKS = 1 << 21;

        /** Marks the heads that there are, a bit each, so that the others, nearly all, are passed over without a look at the words. */
        private final long[] marks;
        private final int lastMark;
        /** The hashes of the heads, each at the first free place from that which it names on, and the words that begin so. */
        private final int[] hashes;
        private final String[][] words;
        private final int head;
        private final int highest;

        Heads(List<String> all) {
            this.head = all.stream().mapToInt(word -> Math.min(word.length(), HEAD)).min().orElseThrow();
            Map<Integer, List<String>> byHead = new HashMap<>();
            all.forEach(word -> byHead.computeIfAbsent(word.substring(0, head).hashCode(), hash -> new ArrayList<>(1)).add(word));
            int count = Integer.highestOneBit(Math.min(MOST_MARKS, byHead.size() * MARKS_PER_HEAD));
            this.marks = new long[count / Long.SIZE];
            this.lastMark = count - 1;
            this.hashes = new int[Integer.highestOneBit(byHead.size()) * 4];
            this.words = new String[hashes.length][];
            byHead.forEach(this::put);
            int power = 1;
            for (int i = 1; i < head; i++) {
                power *= BASE;
            }
            this.highest = power;
        }

        private void put(int hash, List<String> some) {
            marks[mark(hash) / Long.SIZE] |= 1L << mark(hash);
            int at = place(hash);
            hashes[at] = hash;
            words[at] = some.toArray(String[]::new);
        }

        /** Where the words of a head are, or could be put. */
        private int place(int hash) {
            int at = mark(hash) & hashes.length - 1;
            while (words[at] != null && hashes[at] != hash) {
                at = at + 1 & hashes.length - 1;
            }
            return at;
        }

        void find(char[] letters, Found found) {
            int hash = 0;
            for (int at = 0; at < head - 1 && at < letters.length; at++) {
                hash = hash * BASE + letters[at];
            }
            for (int at = head - 1; at < letters.length; at++) {
                hash = hash * BASE + letters[at];
                int start = at - head + 1;
                int mark = mark(hash);
                if ((marks[mark / Long.SIZE] & 1L << mark) != 0) {
                    compare(hash, letters, start, found);
                }
                hash -= letters[start] * highest;
            }
        }

        private void compare(int hash, char[] letters, int start, Found found) {
            String[] some = words[place(hash)];
            if (some != null) {
                for (String word : some) {
                    if (stands(word, letters, start)) {
                        found.at(start, word);
                    }
                }
            }
        }

        private static boolean stands(String word, char[] letters, int start) {
            int at = word.length() <= letters.length - start ? 0 : -1;
            while (at >= 0 && at < word.length()) {
                at = word.charAt(at) == letters[start + at] ? at + 1 : -1;
            }
            return at >= 0;
        }

        private int mark(int hash) {
            return (hash ^ hash >>> 14) & lastMark;
        }
    }
}
