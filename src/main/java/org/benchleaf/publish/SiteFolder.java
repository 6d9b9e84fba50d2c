package org.benchleaf.publish;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.benchleaf.compose.TakenName;

/** A whole site as a folder: its files as they are, without what offers files that are not in it. */
final class SiteFolder {

    private static final String NAME = "site/";

    private SiteFolder() {
    }

    /** The site, packed. */
    static SiteFile pack(List<SiteFile> files) {
        List<SiteFile> packed = files.stream().map(file ->
                new SiteFile(NAME + file.path(), file.isPage() ? withoutOffers(file) : file.bytes())).toList();
        return new SiteFile(TakenName.site(), Archive.of(packed));
    }

    private static byte[] withoutOffers(SiteFile page) {
        FinishedPage finished = new FinishedPage(page);
        var offers = finished.document().select(FinishedPage.OFFERS);
        if (offers.isEmpty()) {
            return page.bytes();
        }
        offers.remove();
        return finished.document().outerHtml().getBytes(StandardCharsets.UTF_8);
    }
}
