package org.benchleaf.compose;

import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.compose.cases.TranslatedPages;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.Offers;
import org.benchleaf.model.AuthorGuide;
import org.benchleaf.model.CheckValues;
import org.benchleaf.model.Library;
import org.benchleaf.page.Page;

/** Makes the pages of the whole site from the cards of its cases. */
public final class SiteComposer {

    private SiteComposer() {
    }

    /**
     * The library, the ways to browse it, the search without its index, and the pages of what all cases share.
     *
     * @param checks the values from outside that the page of methods holds each calculation against
     * @param guide what an author of case files is shown
     * @param audience for whom the site is; the cards are those of its own pages
     */
    public static SitePages compose(Library library, List<CaseCard> cards, List<CheckValues> checks,
            AuthorGuide guide, Audience audience) {
        SiteComposition composition = new SiteComposition(library, cards, checks, guide, audience);
        List<Page> pages = composition.all();
        List<TranslatedPages> translated = composition.translated();
        List<Page> all = Stream.concat(pages.stream(), translated.stream().flatMap(there -> there.pages().stream())).toList();
        return new SitePages(Offers.onSite(pages, library.studio()), Stream.concat(composition.files().stream(),
                composition.map(all).stream()).toList(), translated);
    }

    /**
     * The site's first page alone, as {@link #compose} makes it.
     *
     * @param audience as there
     */
    public static Page first(Library library, List<CaseCard> cards, Audience audience) {
        SiteComposition composition = new SiteComposition(library, cards, List.of(), AuthorGuide.EMPTY, audience);
        return Offers.onSite(List.of(composition.page(PageMakers.SITE.get(0).name().path()).orElseThrow()), library.studio()).get(0);
    }
}
