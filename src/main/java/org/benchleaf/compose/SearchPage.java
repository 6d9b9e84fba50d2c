package org.benchleaf.compose;

import java.util.List;

/** The search. */
final class SearchPage implements SitePageMaker {

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
        sheet.script("fuse.js").script("search-index.js").script("search.js");
        sheet.add(Opening.plain(title, words.say("search.lead")));
        sheet.add(new SearchForm(words.group("search"), List.of(
                sheet.link(words.say("way.browse"), Paths.BROWSE),
                sheet.link(words.say("way.materials"), Paths.MATERIALS),
                sheet.link(words.say("way.glossary"), Paths.GLOSSARY))));
        List<LinkGroups.Group> groups = new java.util.ArrayList<>(Facets.groups(sheet, desk, Integer.MAX_VALUE));
        groups.add(WritingPage.group(sheet));
        sheet.add(new Section("all-pages", words.say("search.all-pages"), java.util.Optional.empty(),
                List.of(new LinkGroups(groups))));
        return List.of(sheet.page(title, words.say("search.lead")));
    }
}
