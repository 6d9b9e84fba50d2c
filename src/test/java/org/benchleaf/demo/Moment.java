package org.benchleaf.demo;

/** When in the treatment the sheet is seen. */
enum Moment {
    BEFORE, DURING, AFTER;

    boolean untreated() {
        return this == BEFORE;
    }
}
