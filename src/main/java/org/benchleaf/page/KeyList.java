package org.benchleaf.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The keys of a file: what each means and how it is written.
 *
 * @param entries in the order of the format, a key before those below it
 * @param words fixed labels
 */
public record KeyList(List<Entry> entries, Map<String, String> words) implements Block {

    public KeyList {
        entries = List.copyOf(entries);
    }

    /**
     * One key.
     *
     * @param path the keys above it and itself, such as {@code support.paper}; a list is marked {@code []}
     * @param needed whether it must be there
     * @param about what it means
     * @param allowed the words it may be; empty if it is free
     * @param open whether other words may be written too
     * @param example as it is written; empty for a key that only holds others
     */
    public record Entry(String path, boolean needed, String about, List<Word> allowed, boolean open, Optional<String> example) {
        public Entry {
            allowed = List.copyOf(allowed);
        }

        /** Of a key that takes these words alone, or any text. */
        public Entry(String path, boolean needed, String about, List<Word> allowed, Optional<String> example) {
            this(path, needed, about, allowed, false, example);
        }

        /** Whether one of the words has a meaning of its own beside it. */
        public boolean explained() {
            return allowed.stream().anyMatch(word -> word.means().isPresent());
        }
    }

    /**
     * A word that a key may be.
     *
     * @param means in a few words; empty where the word says it itself, or another key lists it with its meaning
     */
    public record Word(String word, Optional<String> means) {

        public static Word plain(String word) {
            return new Word(word, Optional.empty());
        }
    }
}
