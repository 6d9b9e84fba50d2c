package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.compose.part.SitePageMaker;
import org.benchleaf.compose.part.SitePageName;
import org.benchleaf.page.LinkGroups;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Section;
import org.benchleaf.words.Words;

/** The index of every way to sort the cases, and a list of cases for each value. */
public final class BrowsePages implements SitePageMaker {

    private static final SitePageName NAME = new SitePageName("browse", Paths.BROWSE, true);

    @Override
    public SitePageName name() {
        return NAME;
    }

    @Override
    public List<Page> make(SiteDesk desk) {
        List<Page> pages = new ArrayList<>();
        Sheet index = desk.sheet(NAME);
        Words words = index.words();
        String title = words.say("way.browse");
        index.add(Opening.plain(title, words.say("browse.lead")));
        Facets.groups(index, desk).forEach(group -> index.add(new Section(group.id(), group.heading(),
                Optional.empty(), List.of(new LinkGroups(List.of(
                        new LinkGroups.Group(group.id() + "-list", "", group.entries())))))));
        List<LinkGroups.Entry> measures = EvidencePages.entries(index, desk);
        if (!measures.isEmpty()) {
            index.add(new Section("by-measure", words.say("browse.by-measure"), Optional.empty(), List.of(new LinkGroups(List.of(
                    new LinkGroups.Group("by-measure-list", "", measures))))));
        }
        pages.add(index.page(title, words.say("browse.lead")));
        for (Facets facet : Facets.values()) {
            if (facet != Facets.MATERIAL) {
                facet.sorted(desk).forEach((value, cards) -> pages.addAll(pages(desk, facet, value, cards)));
            }
        }
        return pages;
    }

    private List<Page> pages(SiteDesk desk, Facets facet, String value, List<CaseCard> cards) {
        List<List<CaseCard>> parts = CaseEntries.pages(cards);
        return IntStream.rangeClosed(1, parts.size()).mapToObj(number -> {
            Sheet sheet = desk.sheet(Paths.numbered(facet.path(value), number), NAME.kind());
            Words words = sheet.words();
            String title = words.say("browse.title-" + facet.word(), "value", facet.label(value, desk, words));
            String heading = CaseEntries.numbered(sheet, title, number, parts.size());
            sheet.add(new Opening(Optional.of(words.say("browse.by-" + facet.word())), heading, facet.lead(value, words), List.of(),
                    Optional.empty()));
            sheet.add(new Section("cases", words.count("browse.cases", cards.size()), Optional.empty(),
                    CaseEntries.page(sheet, parts, number, page -> Paths.numbered(facet.path(value), page))));
            return sheet.page(heading, words.count("browse.description", cards.size(), "value", heading));
        }).toList();
    }
}
