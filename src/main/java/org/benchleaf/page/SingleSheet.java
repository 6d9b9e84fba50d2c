package org.benchleaf.page;

import java.util.List;

/**
 * Blocks on a page of its own, which holds its style and needs no other file.
 *
 * @param title of the page
 * @param language BCP 47 tag of its words
 * @param blocks what it shows, from top to bottom
 */
public record SingleSheet(String title, String language, List<Block> blocks) {

    public SingleSheet {
        blocks = List.copyOf(blocks);
    }
}
