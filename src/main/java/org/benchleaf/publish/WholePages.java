package org.benchleaf.publish;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.benchleaf.compose.part.TakenName;

/**
 * Pages made into files that need no other, so that one can be sent with a mail or kept on a phone without a line.
 *
 * <p>A file holds the pictures at {@value #WIDE} pixels, narrower ones where it would weigh more than {@value #HEAVIEST}
 * bytes, and none where that does not help.
 */
final class WholePages {

    static final int HEAVIEST = 1_500_000;
    private static final int WIDE = 960;
    private static final int NARROW = 480;
    private static final int NONE = 0;

    private WholePages() {
    }

    /**
     * Whole files of pages, by the paths of these.
     *
     * @param pages finished, before they offer anything
     * @param others what they draw on: pictures, styles, scripts, drawings
     * @param read reads a page
     */
    static Map<String, SiteFile> of(List<SiteFile> pages, List<SiteFile> others, Function<SiteFile, FinishedPage> read) {
        Map<String, SiteFile> drawnOn = new LinkedHashMap<>();
        others.forEach(file -> drawnOn.put(file.path(), file));
        Map<String, SiteFile> whole = new LinkedHashMap<>();
        pages.forEach(page -> whole.put(page.path(), whole(page, drawnOn, read)));
        return whole;
    }

    private static SiteFile whole(SiteFile page, Map<String, SiteFile> drawnOn, Function<SiteFile, FinishedPage> read) {
        SiteFile whole = null;
        for (int widest : List.of(WIDE, NARROW, NONE)) {
            WholePage made = new WholePage(read.apply(page), drawnOn, widest);
            byte[] bytes = made.text().getBytes(StandardCharsets.UTF_8);
            whole = new SiteFile(TakenName.whole(page.path(), made.holdsPictures()), bytes);
            if (bytes.length <= HEAVIEST) {
                return whole;
            }
        }
        return whole;
    }
}
