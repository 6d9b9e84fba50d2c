package org.benchleaf.publish;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.benchleaf.compose.cases.Book;
import org.benchleaf.compose.part.TakenName;
import org.benchleaf.model.Studio.TakeAlong;

/** The files that can be taken away, by what they were made of: the path of a page, or the word of a form. */
public final class TakenFiles {

    private final Map<String, TakenFile> offered = new LinkedHashMap<>();
    private final List<SiteFile> files = new ArrayList<>();

    private final Map<String, String> unprinted = new LinkedHashMap<>();

    private TakenFiles() {
    }

    /** None at all. */
    public static TakenFiles none() {
        return new TakenFiles();
    }

    /** Files of an earlier edition that stand as they are, by the words of their forms. */
    public static TakenFiles kept(Map<String, TakenFile> offered) {
        TakenFiles kept = new TakenFiles();
        kept.offered.putAll(offered);
        return kept;
    }

    /**
     * The files made of one case.
     *
     * @param forms in which the studio lets its cases be taken away
     * @param book of the case's own pages
     * @param pages finished, before they offer anything
     * @param data beside them
     * @param others what they draw on: pictures, styles, scripts, drawings
     * @param styles of what is made of them
     * @param finished reads the pages
     */
    public static TakenFiles ofCase(Set<TakeAlong> forms, Book book, List<SiteFile> pages, List<SiteFile> data,
            List<SiteFile> others, TakenStyles styles, FinishedPages finished) {
        TakenFiles taken = new TakenFiles();
        Function<SiteFile, FinishedPage> read = finished::copy;
        if (forms.contains(TakeAlong.ONE_FILE)) {
            WholePages.of(pages, others, read).forEach(taken::add);
        }
        if (forms.contains(TakeAlong.PDF)) {
            taken.addSheets(book, pages, others, styles, read);
        }
        if (forms.contains(TakeAlong.EPUB)) {
            taken.add(TakeAlong.EPUB.words(), new EpubBook(book, pages, others, styles.book(), read).ofCase());
        }
        if (forms.contains(TakeAlong.ZIP)) {
            taken.add(TakeAlong.ZIP.words(), CaseFolder.pack(book, pages, data, others, read));
        }
        return taken;
    }

    /**
     * The files made of a whole site.
     *
     * @param book of all its cases
     * @param files of the site, those to be taken away not among them
     * @param style of books
     */
    public static TakenFiles ofSite(Set<TakeAlong> forms, Book book, List<SiteFile> files, String style) {
        TakenFiles taken = new TakenFiles();
        if (forms.contains(TakeAlong.EPUB)) {
            taken.add(TakeAlong.EPUB.words(),
                    new EpubBook(book, files.stream().filter(SiteFile::isPage).toList(), files, style, FinishedPage::new).ofSite());
        }
        if (forms.contains(TakeAlong.ZIP)) {
            taken.add(TakeAlong.ZIP.words(), SiteFolder.pack(files));
        }
        return taken;
    }

    private void addSheets(Book book, List<SiteFile> pages, List<SiteFile> others, TakenStyles styles,
            Function<SiteFile, FinishedPage> read) {
        Map<String, SiteFile> drawnOn = new LinkedHashMap<>();
        others.forEach(file -> drawnOn.put(file.path(), file));
        for (SiteFile page : pages.stream().filter(each -> TakenName.isSheet(each.path())).toList()) {
            PrintedSheet sheet = new PrintedSheet(page.path(), read.apply(page), drawnOn, styles);
            sheet.missing().ifPresentOrElse(letter -> unprinted.put(page.path(), letter),
                    () -> add(TakenName.sheetOf(page.path()), sheet.file(book)));
        }
    }

    private void add(String key, SiteFile file) {
        offered.put(key, TakenFile.of(file));
        files.add(file);
    }

    /** The files, in the order in which they were made. */
    public List<SiteFile> files() {
        return List.copyOf(files);
    }

    /** The sheets that could not be laid out on paper, each with a letter that cannot be printed. */
    public Map<String, String> unprinted() {
        return new LinkedHashMap<>(unprinted);
    }

    /** What is offered, by what it was made of. */
    public Map<String, TakenFile> offered() {
        return new LinkedHashMap<>(offered);
    }

    /** The file made of a page, or in a form; empty if there is none. */
    Optional<TakenFile> of(String key) {
        return Optional.ofNullable(offered.get(key));
    }
}
