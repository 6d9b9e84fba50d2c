package org.benchleaf.compose;

import java.util.List;

/**
 * What can be taken away from the site: pages that are whole in one file each.
 *
 * @param pages in order; the publisher knows the file made of each
 * @param note what a file taken away does not do
 */
public record TakeAlong(List<Link> pages, String note) implements Block {

    public TakeAlong {
        pages = List.copyOf(pages);
    }
}
