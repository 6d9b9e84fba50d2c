package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.ContactLine;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.compose.part.SitePageMaker;
import org.benchleaf.compose.part.SitePageName;
import org.benchleaf.model.Library;
import org.benchleaf.model.Phrases;
import org.benchleaf.model.Studio;
import org.benchleaf.page.Block;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.LinkList;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Prose;
import org.benchleaf.page.Section;
import org.benchleaf.words.Words;

/** The library: every case, and the ways to find one. Long libraries are cut into several pages. */
public final class LibraryPage implements SitePageMaker {

    private static final SitePageName NAME = new SitePageName("library", Paths.LIBRARY, true);

    @Override
    public SitePageName name() {
        return NAME;
    }

    @Override
    public Stream<String> paths(Library library, List<CaseCard> cards) {
        return IntStream.rangeClosed(1, CaseEntries.pages(cards, CaseEntries.IN_FULL).size()).mapToObj(LibraryPage::pathOf);
    }

    @Override
    public List<Page> make(SiteDesk desk) {
        List<Page> pages = new ArrayList<>();
        List<List<CaseCard>> parts = CaseEntries.pages(desk.cards(), CaseEntries.IN_FULL);
        for (int page = 1; page <= parts.size(); page++) {
            pages.add(page(desk, parts.get(page - 1), page, parts.size()));
        }
        return pages;
    }

    private Page page(SiteDesk desk, List<CaseCard> cards, int number, int count) {
        Sheet sheet = desk.sheet(pathOf(number), NAME.kind());
        Words words = sheet.words();
        String site = desk.library().studio().name();
        sheet.add(number == 1
                ? new Opening(Optional.empty(), site, Optional.of(desk.library().phrases().of(desk.library().studio().about())), List.of(),
                        Optional.of(new Opening.Notice(words.say("notice.word"), words.say("frame.notice"))))
                : Opening.plain(words.say("library.page-heading", "page", number, "pages", count), site));
        sheet.add(new Section("cases", words.count("library.cases", desk.cards().size()), Optional.empty(),
                cases(sheet, cards, number, count)));
        if (number == 1 && !cards.isEmpty()) {
            sheet.add(new Section("browse", words.say("library.browse"), Optional.empty(),
                    List.of(new LinkList(ways(sheet, desk)))));
        }
        if (number == 1) {
            sheet.add(studio(sheet, desk));
        }
        return sheet.page(number == 1 ? site : words.say("library.page-heading", "page", number, "pages", count),
                words.say("library.description", "site", site));
    }

    private static List<LinkList.Entry> ways(Sheet sheet, SiteDesk desk) {
        List<LinkList.Entry> ways = Facets.ways(sheet, desk);
        int measures = EvidencePages.entries(sheet, desk).size();
        if (measures > 0) {
            ways.add(new LinkList.Entry(sheet.link(sheet.words().say("browse.by-measure"), Paths.EVIDENCE),
                    sheet.words().count("library.values", measures)));
        }
        return ways;
    }

    /** What the studio does, who it is and how to reach it, as far as it says so; how the site is cited and followed. */
    private static Section studio(Sheet sheet, SiteDesk desk) {
        Words words = sheet.words();
        Studio studio = desk.library().studio();
        Phrases phrases = desk.library().phrases();
        List<Fact> facts = new ArrayList<>();
        studio.does().forEach(line -> facts.add(Fact.of(words.say("studio.does"), phrases.of(line))));
        studio.people().forEach(line -> facts.add(Fact.of(words.say("studio.people"), phrases.of(line))));
        studio.contact().forEach(line -> facts.add(new Fact(words.say("studio.contact"), ContactLine.of(phrases.of(line)))));
        List<LinkList.Entry> links = new ArrayList<>(List.of(new LinkList.Entry(sheet.link(words.say("cite.site"),
                Paths.SITE_REFERENCE), "")));
        if (Feeds.of(desk).isPresent()) {
            links.add(new LinkList.Entry(sheet.link(words.say("feed.atom"), Paths.ATOM), ""));
            links.add(new LinkList.Entry(sheet.link(words.say("feed.json"), Paths.JSON_FEED), ""));
        }
        Block taken = new LinkList(links);
        return new Section("studio", words.say("studio.heading"), Optional.empty(),
                facts.isEmpty() ? List.of(taken) : List.of(new Facts(facts), taken));
    }

    private static List<Block> cases(Sheet sheet, List<CaseCard> cards, int number, int count) {
        List<Block> blocks = new ArrayList<>();
        if (cards.isEmpty()) {
            blocks.add(new Prose(List.of(Prose.Passage.paragraph(sheet.words().say("library.none")))));
            return blocks;
        }
        blocks.add(CaseEntries.of(sheet, cards));
        CaseEntries.others(sheet, count, number, LibraryPage::pathOf).ifPresent(blocks::add);
        return blocks;
    }

    private static String pathOf(int number) {
        return number == 1 ? Paths.LIBRARY : "library-" + number + ".html";
    }
}
