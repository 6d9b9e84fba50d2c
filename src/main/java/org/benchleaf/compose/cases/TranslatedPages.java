package org.benchleaf.compose.cases;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.compose.part.ForeignWords;
import org.benchleaf.compose.part.LanguageFolder;
import org.benchleaf.compose.part.Offers;
import org.benchleaf.model.Phrases;
import org.benchleaf.model.Studio;
import org.benchleaf.page.Page;
import org.benchleaf.words.Words;

/** Pages in another language than that of their originals, each made when it is asked for. */
public final class TranslatedPages {

    /**
     * Pages that are made together.
     *
     * @param paths where they stand
     * @param pages makes them
     */
    public record PageGroup(List<String> paths, Supplier<List<Page>> pages) {

        public PageGroup {
            paths = List.copyOf(paths);
        }
    }

    private final String original;
    private final String title;
    private final LanguageFolder folder;
    private final Phrases phrases;
    private final List<PageGroup> groups;
    private final Optional<Book> book;
    private ForeignWords foreign;

    /**
     * Prepares the pages and makes none.
     *
     * @param original BCP 47 tag of the language from which they are translated
     * @param title by which the search lists pages of a case; empty for those of the whole site
     * @param folder in which they lie
     * @param phrases what the program says in their language
     * @param groups the pages
     * @param book of those that are a case's own; empty for those of the whole site
     */
    public TranslatedPages(String original, String title, LanguageFolder folder, Phrases phrases, List<PageGroup> groups,
            Optional<Book> book) {
        this.original = original;
        this.title = title;
        this.folder = folder;
        this.phrases = phrases;
        this.groups = List.copyOf(groups);
        this.book = book;
    }

    /** The same pages, of which the first offers what can be taken away. */
    public TranslatedPages offering(Studio studio) {
        return new TranslatedPages(original, title, folder, phrases, List.of(new PageGroup(groups.stream()
                .flatMap(group -> group.paths().stream()).toList(), () -> Offers.onCase(pages(), studio.takeAlong()))), book);
    }

    /** The book of the pages of a case, without those of classes; empty for those of the whole site. */
    public Optional<Book> book() {
        return book;
    }

    /** BCP 47 tag. */
    public String language() {
        return folder.language();
    }

    /** The pages, in the same order as those of the original. */
    public List<Page> pages() {
        return groups.stream().flatMap(group -> group.pages().get().stream()).toList();
    }

    /** One page, for which only those are made that are made with it; empty if there is none at that path. */
    public Optional<Page> page(String path) {
        return groups.stream().filter(group -> group.paths().contains(path)).flatMap(group -> group.pages().get().stream())
                .filter(page -> page.path().equals(path)).findFirst();
    }

    /**
     * A finished page with everything marked that stands in the language of the original.
     *
     * @param html the page in this language
     * @param original the same page in the language of the original
     */
    public ForeignWords.Marked marked(String html, ForeignWords.Original original) {
        return foreign().marked(html, original);
    }

    /** Made when the first page is, since it takes in every text that the program says in the language. */
    private synchronized ForeignWords foreign() {
        if (foreign == null) {
            foreign = new ForeignWords(language(), original, phrases);
        }
        return foreign;
    }

    /** The path of the page of which that one is the translation. */
    public String originalOf(Page page) {
        return folder.plain(page.path());
    }

    /** How the search lists a page: by its own title, or by that of its case with the kind of page where it is not the case study. */
    public String searchTitle(Page page) {
        return title.isEmpty() ? page.title() : page.kind().equals("case-study") ? title
                : Words.in(language()).more(page.title(), title);
    }
}
