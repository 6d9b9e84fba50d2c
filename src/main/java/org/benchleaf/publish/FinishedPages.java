package org.benchleaf.publish;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.benchleaf.compose.part.ForeignWords;
import org.benchleaf.compose.part.PageTree;

/**
 * Finished pages for all that is made of them: what changes a page has a copy of its own. May be used from several threads.
 */
public final class FinishedPages {

    private final boolean keeps;
    /** By the file itself: the first page of a case is written a second time, with what it offers. */
    private final Map<SiteFile, PageTree> trees = new ConcurrentHashMap<>();
    private final Map<SiteFile, ForeignWords.Original> originals = new ConcurrentHashMap<>();

    private FinishedPages(boolean keeps) {
        this.keeps = keeps;
    }

    /** Those of a case, each read once. */
    public static FinishedPages ofCase() {
        return new FinishedPages(true);
    }

    /** Those of a whole site, whose trees would fill the memory: each is read whenever it is asked for. */
    public static FinishedPages ofSite() {
        return new FinishedPages(false);
    }

    /** What the page holds. */
    public PageTree tree(SiteFile page) {
        return keeps ? trees.computeIfAbsent(page, FinishedPages::read) : read(page);
    }

    private static PageTree read(SiteFile page) {
        return PageTree.of(page.text());
    }

    /** What of the page can stand in its translations. */
    public ForeignWords.Original original(SiteFile page) {
        return keeps ? originals.computeIfAbsent(page, file -> ForeignWords.Original.of(tree(file)))
                : ForeignWords.Original.of(read(page));
    }

    /** The file of a translated page, whose tree is known from marking it. */
    public SiteFile file(String path, ForeignWords.Marked marked) {
        SiteFile file = SiteFile.text(path, marked.html());
        if (keeps) {
            trees.put(file, marked.tree());
        }
        return file;
    }

    /** Lets go of the trees, since those of a case in all its languages are many; what its translations can share with it stays. */
    public void forget() {
        trees.clear();
    }

    /** The page, as it is finished, to be changed. */
    FinishedPage copy(SiteFile page) {
        return new FinishedPage(page.path(), tree(page).copy());
    }
}
