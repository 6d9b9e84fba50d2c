package org.benchleaf.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Sources with the pages that cite them.
 *
 * @param numbered whether they are publications, each with its number
 * @param entries in the order of their numbers
 * @param words fixed labels
 */
public record Bibliography(boolean numbered, List<Entry> entries, Map<String, String> words) implements Block {

    public Bibliography {
        entries = List.copyOf(entries);
    }

    /**
     * One source: anchor, author, year, title, where it is found, the address of a page that carries it, how it was consulted,
     * who cites it, and in words how many more do (may be empty).
     */
    public record Entry(String id, String author, String year, String title, String where,
            Optional<String> address, String status,
            List<Link> citedBy, String more) {
        public Entry {
            citedBy = List.copyOf(citedBy);
        }
    }
}
