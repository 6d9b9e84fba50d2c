package org.benchleaf.compose;

import java.util.List;

/**
 * Every kind of page, in the order of the ways to them.
 *
 * @param ofCase the pages that a case may have
 * @param ofSite the pages of the whole site
 */
record PageNames(List<CasePageName> ofCase, List<SitePageName> ofSite) {

    PageNames {
        ofCase = List.copyOf(ofCase);
        ofSite = List.copyOf(ofSite);
    }
}
