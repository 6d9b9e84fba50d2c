package org.benchleaf.plan;

/**
 * An uninterrupted piece of a station's work or waiting.
 *
 * @param name as a reader sees it
 * @param minutes how long it takes, at least 1
 */
public record WorkPart(String name, int minutes) {

    public WorkPart {
        if (minutes < 1) {
            throw new IllegalArgumentException(name + " takes " + minutes + " min");
        }
    }
}
