package org.benchleaf.publish;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.compose.cases.Book;
import org.benchleaf.compose.part.TakenName;
import org.jsoup.nodes.DataNode;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;

/** A finished page as it is laid out on paper: everything open, nothing to press, links within the sheet alone. */
final class PrintedSheet {

    /** What the paper says once more in words; formulas stand in the line below them. */
    private static final String LEFT_OUT = ".formula, .comparison__room";
    /** A line to write on is as wide as what stands on it. */
    private static final String LINE = "\u00a0".repeat(14);
    /** What is between them runs from left to right (Unicode Standard Annex 9, 2.2). */
    private static final String FROM_LEFT = "\u202A";
    private static final String AS_BEFORE = "\u202C";
    private static final String CASE_PICTURES = "/pictures/";

    private final String path;
    private final Document page;
    private final boolean holdsPictures;

    /**
     * A page made ready.
     *
     * @param path of the page
     * @param drawnOn files by their paths from the site's root
     * @param styles of the paper and of the drawings on it
     */
    PrintedSheet(String path, FinishedPage finished, Map<String, SiteFile> drawnOn, TakenStyles styles) {
        this.path = path;
        this.page = finished.document();
        Set<String> pictures = finished.toRead(drawnOn::containsKey);
        this.holdsPictures = pictures.stream().anyMatch(picture -> picture.contains(CASE_PICTURES));
        page.select(LEFT_OUT).remove();
        page.select("img").forEach(picture -> picture.attr("src",
                drawnOn.get(finished.path(picture.attr("src"))).pictureData()));
        page.select("image[href]").forEach(picture -> picture.attr("xlink:href",
                drawnOn.get(finished.path(picture.attr("href"))).pictureData()).removeAttr("href"));
        finished.relink((to, there) -> to.startsWith("#") && page.getElementById(to.substring(1)) != null ? to : "");
        // A link is written to the file behind the rest of its line, and would be read after its full stop.
        page.select("a[href^=https:]").unwrap();
        page.select(".write:empty").forEach(line -> line.text(LINE));
        if (page.selectFirst("html").attr("dir").equals("rtl")) {
            MirroredRows.turn(page);
            page.select("bdi, [dir=ltr], .working__number").forEach(PrintedSheet::setApart);
        }
        page.select("summary").tagName("p");
        page.select("details").tagName("div");
        drawings(styles.drawing());
        head(styles.sheet());
    }

    /** The layout knows no element that sets its text apart, only the signs for it. */
    private static void setApart(Element piece) {
        boolean isFromLeft = piece.text().codePoints().noneMatch(ArabicLetters::has);
        if (isFromLeft && piece.closest("svg") == null && !piece.isBlock()) {
            // Each text of its own would be laid out from right to left again.
            if (piece.selectFirst("a, img") == null) {
                piece.text(piece.text());
            }
            piece.prependText(FROM_LEFT).appendText(AS_BEFORE);
        }
    }

    /** A drawing brings its own style with it, which must know where it stands, and its words for those who do not see it. */
    private void drawings(String style) {
        for (Element drawing : page.select("svg")) {
            String words = drawing.attr("aria-label").isEmpty() ? drawing.select("> title, > desc").text() : drawing.attr("aria-label");
            drawing.attr("alt", words.isEmpty() ? drawing.parent().text() : words);
            drawing.addClass(drawing.parent().className());
            drawing.prependElement("style", Parser.NamespaceSvg).appendChild(new DataNode(style));
        }
    }

    /** The title, the summary and the bookmarks of the file. */
    private void head(String style) {
        Element head = page.head();
        String description = head.select("meta[name=description]").attr("content");
        String title = page.title();
        head.empty();
        head.appendElement("title").text(title);
        head.appendElement("meta").attr("name", "subject").attr("content", description);
        head.appendElement("style").appendChild(new DataNode(style));
        Element bookmarks = head.appendElement("bookmarks");
        for (Element section : page.select("main > section[id]:has(h2)")) {
            bookmarks.appendElement("bookmark").attr("name", section.selectFirst("h2").text()).attr("href", "#" + section.id());
        }
    }

    /** The first letter of the page that cannot be printed; empty if all can be. */
    Optional<String> missing() {
        return PaperLetters.missing(page.title() + page.body().text());
    }

    /**
     * The file.
     *
     * @param book of the case, of which the file has day and creator
     */
    SiteFile file(Book book) {
        page.head().appendElement("meta").attr("name", "author").attr("content", book.creator());
        return new SiteFile(TakenName.sheet(path, holdsPictures), PaperFile.of(page, book.modified()));
    }
}
