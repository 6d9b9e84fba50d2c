package org.benchleaf.compose;

import java.util.List;
import java.util.function.Supplier;

/** The pages of one case and of its classes in another of its languages, each made when it is asked for. */
public final class TranslatedPages {

    private final String original;
    private final CaseDesk desk;
    private final List<Supplier<Page>> pages;

    /**
     * Prepares the pages and makes none.
     *
     * @param original BCP 47 tag of the language from which they are translated
     * @param desk in the language of the pages
     */
    TranslatedPages(String original, CaseDesk desk, List<Supplier<Page>> pages) {
        this.original = original;
        this.desk = desk;
        this.pages = List.copyOf(pages);
    }

    /** BCP 47 tag. */
    public String language() {
        return desk.folder().language();
    }

    /** The pages, in the same order as those of the original. */
    public List<Page> pages() {
        return pages.stream().map(Supplier::get).toList();
    }

    /**
     * A finished page with everything marked that stands in the language of the original.
     *
     * @param html the page in this language
     * @param originalHtml the same page in the language of the original
     */
    public String marked(String html, String originalHtml) {
        return new ForeignWords(language(), original, desk.library().phrases()).marked(html, originalHtml);
    }

    /** The path of the page of which that one is the translation. */
    public String originalOf(Page page) {
        return desk.folder().plain(page.path());
    }
}
