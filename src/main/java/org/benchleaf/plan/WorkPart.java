package org.benchleaf.plan;

/**
 * An uninterrupted piece of a station's work or waiting.
 *
 * @param name as a reader sees it
 * @param kind what sort of work it is, the same for pieces of which there are several, whichever number their name has
 * @param minutes how long it takes, at least 1
 */
public record WorkPart(String name, String kind, int minutes) {

    /** A piece that is the only one of its kind. */
    public WorkPart(String name, int minutes) {
        this(name, name, minutes);
    }

    public WorkPart {
        if (minutes < 1) {
            throw new IllegalArgumentException(name + " takes " + minutes + " min");
        }
    }
}
