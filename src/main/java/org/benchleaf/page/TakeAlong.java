package org.benchleaf.page;

import java.util.List;

/**
 * What can be taken away from the site: pages that are whole in one file each, books and folders of pages.
 *
 * @param files in order: a link's place is the path of a page, or the word of a form; the publisher knows the file made of each
 * @param note what a file taken away does not do
 */
public record TakeAlong(List<Link> files, String note) implements Block {

    public TakeAlong {
        files = List.copyOf(files);
    }
}
