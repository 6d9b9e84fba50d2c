package org.benchleaf.page;

import java.util.Optional;

/**
 * Something to time: readable and writable on paper, running where scripts run.
 *
 * @param id unique on the page
 * @param label what is timed
 * @param length how long, in words
 * @param seconds how long, for the timer; the low end of a range
 * @param iso the same time for a program; empty for a range
 * @param kind what is timed
 * @param then id of the timer that begins when this one is answered
 * @param at when it ends in the step, in words; empty if it starts with the step
 * @param due the same in seconds, the low end of a range; of a whole step, how long it may take at most; 0 where it is not told
 */
public record BenchTimer(String id, String label, String length, long seconds, String iso, Kind kind, Optional<String> then,
        Optional<String> at, long due) {

    /** What is timed. */
    public enum Kind { BATH, CHANGE, LOOK, WEIGHT, WHOLE, DROP }

    /** The same timer of a step that may take so many seconds at most. */
    public BenchTimer dueBy(long most) {
        return new BenchTimer(id, label, length, seconds, iso, kind, then, at, most);
    }

    /** The same timer, followed by another. */
    public BenchTimer followedBy(String next) {
        return new BenchTimer(id, label, length, seconds, iso, kind, Optional.of(next), at, due);
    }
}
