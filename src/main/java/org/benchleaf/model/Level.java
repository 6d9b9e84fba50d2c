package org.benchleaf.model;

/** For whom a step sheet is written. */
public enum Level {
    FOUNDATION, INTERMEDIATE, ADVANCED;

    /** The word as written in a case file. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
