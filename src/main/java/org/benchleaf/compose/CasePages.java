package org.benchleaf.compose;

import java.util.List;

/**
 * Everything that one case brings to the site.
 *
 * @param pages its pages
 * @param files data beside them
 * @param card what the pages of the whole site need of it
 */
public record CasePages(List<Page> pages, List<DataFile> files, CaseCard card) {

    public CasePages {
        pages = List.copyOf(pages);
        files = List.copyOf(files);
    }
}
