package org.benchleaf.browser;

import java.util.List;
import java.util.stream.Stream;

/** Every rule that is asked of the site, by what is needed to see it broken. */
final class RuleBook {

    private RuleBook() {
    }

    /** Rules of one page, seen in its text. */
    static List<PageRule> ofPages(SiteUnderTest site) {
        return Stream.of(FrameRules.all(), PictureRules.all(), ChartRules.all(), TextRules.all(), OfflineRules.all(),
                AssetRules.of(site)).flatMap(List::stream).toList();
    }

    /** Rules that need the whole site. */
    static List<SiteRule> ofTheSite() {
        return SiteRules.all();
    }

    /** Rules that need a browser. */
    static List<LiveRule> inTheBrowser() {
        return LiveRules.all();
    }
}
