package org.benchleaf.compose.part;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.model.AuthorGuide;
import org.benchleaf.model.CheckValues;
import org.benchleaf.model.Library;

/**
 * What the makers of the site's pages work from.
 *
 * @param library what all cases share
 * @param cards the cases that are published, in the order in which they are listed
 * @param checks the values from outside that calculations are held against
 * @param guide what an author of case files is shown
 * @param audience for whom the site is
 * @param names every kind of page
 * @param folder in which language the pages are told, and where those lie that are told in several
 */
public record SiteDesk(Library library, List<CaseCard> cards, List<CheckValues> checks, AuthorGuide guide, Audience audience,
                PageNames names, LanguageFolder folder) {

    public SiteDesk {
        cards = List.copyOf(cards);
        checks = List.copyOf(checks);
    }

    /** For a site whose own pages are told in its own language alone. */
    public SiteDesk(Library library, List<CaseCard> cards, List<CheckValues> checks, AuthorGuide guide, Audience audience,
            PageNames names) {
        this(library, cards, checks, guide, audience, names, LanguageFolder.NONE);
    }

    /** The language of the pages. */
    public String language() {
        return folder.language().isEmpty() ? library.studio().language() : folder.language();
    }

    /** Where the site stands on the web; empty if the studio states no address, or the site is not for everybody. */
    public Optional<WebAddress> web() {
        return audience.isPublic() ? WebAddress.of(library.studio()) : Optional.empty();
    }

    /** An empty page of that name at its own path, ready to be filled. */
    public Sheet sheet(SitePageName page) {
        return sheet(page.path(), page.kind());
    }

    /** An empty page at another path. */
    public Sheet sheet(String path, String kind) {
        return new Sheet(folder.of(path), kind, language(), library, Map.of(), names).madeFor(audience)
                .lyingIn(folder.pages().contains(path) ? folder : LanguageFolder.NONE);
    }

    /** Cases in the order in which a site lists them. */
    public static List<CaseCard> ordered(List<CaseCard> cards) {
        return cards.stream().sorted(Comparator.comparing(CaseCard::title).thenComparing(CaseCard::id)).toList();
    }
}
