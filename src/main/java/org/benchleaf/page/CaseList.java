package org.benchleaf.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Cases to choose from.
 *
 * @param entries in order
 * @param words fixed labels
 */
public record CaseList(List<Entry> entries, Map<String, String> words) implements Block {

    public CaseList {
        entries = List.copyOf(entries);
    }

    /**
     * One case.
     *
     * @param title with the way to it
     * @param language BCP 47 tag of title and summary
     * @param summary one or two sentences
     * @param facts object, technique, level
     * @param picture that stands for it
     * @param sheets ways to its other pages
     */
    public record Entry(Link title, String language, String summary, List<Fact> facts, Optional<Photo> picture,
            List<OtherPage> sheets) {
        public Entry {
            facts = List.copyOf(facts);
            sheets = List.copyOf(sheets);
        }
    }

    /**
     * The way to another page of a case.
     *
     * @param link whose text makes sense alone
     * @param shown the kind of page; the title of the case stands above it already
     */
    public record OtherPage(Link link, String shown) {
    }
}
