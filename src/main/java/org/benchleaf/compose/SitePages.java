package org.benchleaf.compose;

import java.util.List;
import org.benchleaf.compose.cases.TranslatedPages;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Page;

/**
 * The pages of the whole site.
 *
 * @param files data beside them, such as the schemas of the format
 * @param translated those that stand in another language too
 */
public record SitePages(List<Page> pages, List<DataFile> files, List<TranslatedPages> translated) {

    public SitePages {
        pages = List.copyOf(pages);
        files = List.copyOf(files);
        translated = List.copyOf(translated);
    }
}
