package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;

/**
 * One page of the site.
 *
 * @param path relative to the site's root, with forward slashes
 * @param kind such as {@code case-study}, {@code step-sheet}; chooses the page's layout
 * @param title of the page alone; the template adds the site's
 * @param description one sentence for the reader's search
 * @param language BCP 47 tag of the words
 * @param caseId of the case it belongs to; empty for a page of the whole site
 * @param blocks from top to bottom
 */
public record Page(String path, String kind, String title, String description, String language,
        Optional<String> caseId, List<Block> blocks) {

    public Page {
        blocks = List.copyOf(blocks);
    }

    /** The way from this page up to the site's root: empty, {@code ../} or {@code ../../}. */
    public String up() {
        return "../".repeat((int) path.chars().filter(c -> c == '/').count());
    }
}
