package org.benchleaf.compose.part;

import java.util.List;

/**
 * Every kind of page, in the order of the ways to them.
 *
 * @param ofCase the pages that a case may have
 * @param ofSite the pages of the whole site
 * @param ofClass the pages that a class may have
 */
public record PageNames(List<CasePageName> ofCase, List<SitePageName> ofSite, List<ClassPageName> ofClass) {

    public PageNames {
        ofCase = List.copyOf(ofCase);
        ofSite = List.copyOf(ofSite);
        ofClass = List.copyOf(ofClass);
    }
}
