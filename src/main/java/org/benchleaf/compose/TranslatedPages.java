package org.benchleaf.compose;

import java.util.List;

/** The pages of one case in another of its languages, each made when it is asked for. */
public final class TranslatedPages {

    private final String language;
    private final String original;
    private final CaseDesk desk;
    private final List<CasePageMaker> makers;

    TranslatedPages(String language, String original, CaseDesk desk, List<CasePageMaker> makers) {
        this.language = language;
        this.original = original;
        this.desk = desk;
        this.makers = makers;
    }

    /** BCP 47 tag. */
    public String language() {
        return language;
    }

    /** The pages, in the same order as those of the original. */
    public List<Page> pages() {
        return makers.stream().map(maker -> maker.make(desk)).toList();
    }

    /**
     * A finished page with everything marked that stands in the language of the original.
     *
     * @param html the page in this language
     * @param originalHtml the same page in the language of the original
     */
    public String marked(String html, String originalHtml) {
        return new ForeignWords(language, original, desk.library().phrases()).marked(html, originalHtml);
    }

    /** The path of the page of which that one is the translation. */
    public String originalOf(Page page) {
        return desk.folder().plain(page.path());
    }
}
