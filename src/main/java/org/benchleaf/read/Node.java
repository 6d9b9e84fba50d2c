package org.benchleaf.read;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.Place;

/** One value of a YAML file, read as written, with its place. */
public sealed interface Node {

    /** Where the value begins. */
    Place place();

    /**
     * A single value. Nothing is guessed about it: {@code no}, {@code 012} and {@code 2026-01-02} stay what they are.
     *
     * @param text the text, quotes removed and escapes resolved
     * @param plain whether it was written without quotes
     */
    record Scalar(String text, boolean plain, Place place) implements Node {

        /** Whether nothing was written. */
        public boolean isNothing() {
            return plain && text.isEmpty();
        }
    }

    /** A list. */
    record Sequence(List<Node> items, Place place) implements Node {
        public Sequence {
            items = List.copyOf(items);
        }
    }

    /** Keys and values, in the order written. */
    record Mapping(Map<String, Entry> entries, Place place) implements Node {
        public Mapping {
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }

        /** The value under a key, if it is there. */
        public Optional<Node> get(String key) {
            return Optional.ofNullable(entries.get(key)).map(Entry::value);
        }
    }

    /** A value and the place of its key. */
    record Entry(Place keyPlace, Node value) {
    }
}
