package org.benchleaf.page;

import java.util.List;

/**
 * Ways to browse: groups of links under headings of the third level.
 *
 * @param groups in order
 */
public record LinkGroups(List<Group> groups) implements Block {

    public LinkGroups {
        groups = List.copyOf(groups);
    }

    /** A heading and the links below it, each with a count in words. */
    public record Group(String id, String heading, List<Entry> entries) {
        public Group {
            entries = List.copyOf(entries);
        }
    }

    /** A link and what stands beside it, such as "3 cases". */
    public record Entry(Link link, String beside) {
    }
}
