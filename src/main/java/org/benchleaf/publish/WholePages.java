package org.benchleaf.publish;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.compose.WholeName;

/**
 * Pages made into files that need no other, so that one can be sent with a mail or kept on a phone without a line.
 *
 * <p>A file holds the pictures at {@value #WIDE} pixels, narrower ones where it would weigh more than {@value #HEAVIEST}
 * bytes, and none where that does not help.
 */
public final class WholePages {

    static final int HEAVIEST = 1_500_000;
    private static final int WIDE = 960;
    private static final int NARROW = 480;
    private static final int NONE = 0;

    private final Map<String, SiteFile> byPage = new LinkedHashMap<>();

    /** None at all. */
    public static WholePages none() {
        return new WholePages();
    }

    /**
     * Whole files of pages.
     *
     * @param pages finished, without a list of whole files
     * @param others what they draw on: pictures, styles, scripts, drawings
     */
    public static WholePages of(List<SiteFile> pages, List<SiteFile> others) {
        Map<String, SiteFile> drawnOn = new LinkedHashMap<>();
        others.forEach(file -> drawnOn.put(file.path(), file));
        WholePages whole = new WholePages();
        pages.forEach(page -> whole.byPage.put(page.path(), whole(page, drawnOn)));
        return whole;
    }

    private static SiteFile whole(SiteFile page, Map<String, SiteFile> drawnOn) {
        SiteFile whole = null;
        for (int widest : List.of(WIDE, NARROW, NONE)) {
            WholePage made = new WholePage(page, drawnOn, widest);
            byte[] bytes = made.text().getBytes(StandardCharsets.UTF_8);
            whole = new SiteFile(WholeName.of(page.path(), made.holdsPictures()), bytes);
            if (bytes.length <= HEAVIEST) {
                return whole;
            }
        }
        return whole;
    }

    /** The files, in the order of their pages. */
    public List<SiteFile> files() {
        return new ArrayList<>(byPage.values());
    }

    /** The file of a page; empty if none was made. */
    Optional<WholeFile> of(String page) {
        return Optional.ofNullable(byPage.get(page)).map(WholeFile::of);
    }
}
