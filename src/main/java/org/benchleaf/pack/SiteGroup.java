package org.benchleaf.pack;

import java.util.stream.Stream;

/** The groups of those files of a site that belong to no case; each is taken over from the last edition or made anew as a whole. */
public enum SiteGroup {
    /** Pages and data of the whole site. */
    PAGES(""),
    /** The index of the search. */
    SEARCH("/search"),
    /** The files that hold a whole site. */
    TAKEN("/"),
    /** The first page, which offers those. */
    FIRST("/first"),
    /** The list by which devices keep the edition. */
    KEPT("//");

    /** Where its batch stands among those of the cases, of which none can be called so. */
    private final String batch;

    SiteGroup(String batch) {
        this.batch = batch;
    }

    String batch() {
        return batch;
    }

    /** Whether a batch is one of these and not that of a case. */
    static boolean isOne(String batch) {
        return Stream.of(values()).anyMatch(group -> group.batch.equals(batch));
    }
}
