package org.benchleaf.compose;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.model.CheckValues;
import org.benchleaf.model.Library;

/** Makes the pages of the whole site from the cards of its cases. */
public final class SiteComposer {

    private SiteComposer() {
    }

    /**
     * The library, the ways to browse it, the search without its index, and the pages of what all cases share.
     *
     * @param checks the values from outside that the page of methods holds each calculation against
     * @param audience for whom the site is; the cards are those of its own pages
     */
    public static SitePages compose(Library library, List<CaseCard> cards, List<CheckValues> checks,
            Audience audience) {
        List<CaseCard> ordered = cards.stream().sorted(Comparator.comparing(CaseCard::title)
                .thenComparing(CaseCard::id)).toList();
        SiteDesk desk = new SiteDesk(library, ordered, checks, audience, PageMakers.NAMES);
        List<Page> pages = PageMakers.SITE.parallelStream().flatMap(maker -> maker.make(desk).stream()).toList();
        return new SitePages(pages, Stream.concat(WritingPage.files().stream(),
                Stream.of(SiteReference.file(library.studio(), Words.in(desk.language())))).toList());
    }
}
