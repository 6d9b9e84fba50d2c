package org.benchleaf.compose.site;

import java.util.List;
import java.util.Optional;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.compose.part.SitePageMaker;
import org.benchleaf.compose.part.SitePageName;
import org.benchleaf.page.LinkGroups;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.SearchForm;
import org.benchleaf.page.Section;
import org.benchleaf.words.Words;

/** The search. */
public final class SearchPage implements SitePageMaker {

    private static final SitePageName NAME = new SitePageName("search", Paths.SEARCH, true);

    @Override
    public SitePageName name() {
        return NAME;
    }

    @Override
    public List<Page> make(SiteDesk desk) {
        Sheet sheet = desk.sheet(NAME);
        Words words = sheet.words();
        String title = words.say("way.search");
        sheet.script(Paths.searchScript(desk.folder().language())).script("search.js");
        sheet.add(Opening.plain(title, words.say("search.lead")));
        sheet.add(new SearchForm(Paths.up(sheet.path()), Paths.searchScript(desk.folder().language()), words.group("search"), List.of(
                sheet.link(words.say("way.browse"), Paths.BROWSE),
                sheet.link(words.say("way.materials"), Paths.MATERIALS),
                sheet.link(words.say("way.glossary"), Paths.GLOSSARY))));
        sheet.add(new Section("other-pages", words.say("search.other-pages"), Optional.empty(),
                List.of(new LinkGroups(List.of(WritingPage.group(sheet))))));
        return List.of(sheet.page(title, words.say("search.lead")));
    }
}
