package org.benchleaf.page;

import java.util.List;

/**
 * Many cases to choose from, one short line each.
 *
 * @param entries in order
 */
public record CaseLines(List<Entry> entries) implements Block {

    public CaseLines {
        entries = List.copyOf(entries);
    }

    /**
     * One case.
     *
     * @param title with the way to it
     * @param language BCP 47 tag of the title
     * @param about what it is, such as "broadside, letterpress · Foundation"
     */
    public record Entry(Link title, String language, String about) {
    }
}
