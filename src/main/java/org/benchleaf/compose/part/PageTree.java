package org.benchleaf.compose.part;

import java.nio.charset.StandardCharsets;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;

/**
 * A finished page as a tree, read once for all that is taken from it: the words that the search finds, the texts that its translations
 * share with it, the files that are taken away. May be looked at by several threads.
 */
public final class PageTree {

    private final Document tree;

    private PageTree(Document tree) {
        this.tree = tree;
    }

    /** Reads a page. */
    public static PageTree of(String html) {
        return new PageTree(read(html));
    }

    /** Reads a page for one alone, to be changed; written again, nothing stands between its elements but what stands there. */
    public static Document read(String html) {
        Document tree = Jsoup.parse(html);
        tree.outputSettings().prettyPrint(false).charset(StandardCharsets.UTF_8);
        return tree;
    }

    /**
     * What reading a page would give whose text was just written from a tree.
     *
     * @param tree written with the end of a line behind it, which is then read too
     */
    static PageTree written(Document tree) {
        tree.appendText("\n");
        return new PageTree(tree);
    }

    /** A copy, to be changed; made in less than half the time of reading. */
    public Document copy() {
        return tree.clone();
    }

    /** The page, only to be looked at. */
    Document shown() {
        return tree;
    }
}
