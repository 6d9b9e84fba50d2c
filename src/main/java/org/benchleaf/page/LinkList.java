package org.benchleaf.page;

import java.util.List;

/**
 * A list of links, each with a line of its own.
 *
 * @param entries in order
 */
public record LinkList(List<Entry> entries) implements Block {

    public LinkList {
        entries = List.copyOf(entries);
    }

    /** A link and a sentence about where it leads; the sentence may be empty. */
    public record Entry(Link link, String about) {
    }
}
