package org.benchleaf.compose.cases;

import java.util.List;
import java.util.Optional;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.LinkPicture;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Page;

/**
 * Everything that one case brings to the site.
 *
 * @param pages its pages
 * @param files data beside them
 * @param card what the pages of the whole site need of it
 * @param book of its pages
 * @param manifest of its pictures; empty if there may be none
 * @param linkPicture beside a link to it; empty if there may be none
 * @param translated its pages in its other languages
 */
public record CasePages(List<Page> pages, List<DataFile> files, CaseCard card, Book book,
        Optional<PictureManifest> manifest, Optional<LinkPicture> linkPicture, List<TranslatedPages> translated) {

    public CasePages {
        pages = List.copyOf(pages);
        files = List.copyOf(files);
        translated = List.copyOf(translated);
    }

    /** How the search lists a page of the case: by the title of the case, and the kind of page where it is another. */
    public String searchTitle(Page page) {
        return page.path().equals(card.path()) ? card.title() : page.title() + ": " + card.title();
    }
}
