package org.benchleaf.publish;

import java.util.HashMap;
import java.util.Map;
import org.jsoup.nodes.Document;

/**
 * Finished pages of one case for all that is made of them to be taken away: each is read once, and every maker changes a copy of
 * its own, which takes less than half the time of reading.
 */
final class FinishedPages {

    private final Map<String, Document> read = new HashMap<>();

    /** The page, as it is finished. */
    FinishedPage copy(SiteFile page) {
        return new FinishedPage(page.path(), read.computeIfAbsent(page.path(), path -> FinishedPage.document(page)).clone());
    }
}
