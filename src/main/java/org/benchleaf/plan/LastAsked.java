package org.benchleaf.plan;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * What was made for the keys asked for last; where one more is too many, that which was not asked for the longest goes. Each is made
 * once, however many threads ask for it, and different ones at the same time.
 */
final class LastAsked<K, V> {

    private static final float FILLED = 0.75f;

    private final Map<K, Held<V>> kept;

    /**
     * Holds nothing yet.
     *
     * @param most that it keeps
     */
    LastAsked(int most) {
        this.kept = new LinkedHashMap<>(most, FILLED, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<K, Held<V>> eldest) {
                return size() > most;
            }
        };
    }

    /** A place for what is made for one key. */
    private static final class Held<V> {

        private V value;

        /** Made by the first who asks; the others wait for it. What cannot be made is tried again. */
        synchronized <K> V value(K asked, Function<K, V> make) {
            if (value == null) {
                value = make.apply(asked);
            }
            return value;
        }
    }

    /** What was made for the key before, or is made now. */
    V of(K asked, Function<K, V> make) {
        Held<V> held;
        synchronized (kept) {
            held = kept.computeIfAbsent(asked, first -> new Held<>());
        }
        return held.value(asked, make);
    }
}
