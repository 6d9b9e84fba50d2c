package org.benchleaf.publish;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.benchleaf.compose.part.TakenName;

/** A whole site as a folder: its files as they are, without what offers files that are not in it. */
final class SiteFolder {

    private static final String NAME = "site/";

    /** What keeps a site on a device, which a folder is already. */
    private static final Set<String> OF_DEVICES = Set.of("sw.js", "manifest.webmanifest");

    private SiteFolder() {
    }

    /** The site, packed. */
    static SiteFile pack(List<SiteFile> files) {
        List<SiteFile> packed = files.stream().filter(file -> !OF_DEVICES.contains(file.path())).map(file ->
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
