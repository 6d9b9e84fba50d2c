package org.benchleaf.compose;

import java.util.List;

/** The search. */
final class SearchPage implements SitePageMaker {

    @Override
    public String kind() {
        return "search";
    }

    @Override
    public String path() {
        return Paths.SEARCH;
    }

    @Override
    public boolean inMenu() {
        return true;
    }

    @Override
    public List<Page> make(SiteDesk desk) {
        Sheet sheet = desk.sheet(this);
        Words words = sheet.words();
        String title = words.say("way.search");
        sheet.script("fuse.js").script("search-index.js").script("search.js");
        sheet.add(Opening.plain(title, words.say("search.lead")));
        sheet.add(new SearchForm(words.group("search"), List.of(
                sheet.link(words.say("way.browse"), Paths.BROWSE),
                sheet.link(words.say("way.materials"), Paths.MATERIALS),
                sheet.link(words.say("way.glossary"), Paths.GLOSSARY))));
        return List.of(sheet.page(title, words.say("search.lead")));
    }
}
