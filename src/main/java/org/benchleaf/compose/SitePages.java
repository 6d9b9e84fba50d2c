package org.benchleaf.compose;

import java.util.List;

/** The pages of the whole site and the data beside them, such as the schemas of the format. */
public record SitePages(List<Page> pages, List<DataFile> files) {

    public SitePages {
        pages = List.copyOf(pages);
        files = List.copyOf(files);
    }
}
