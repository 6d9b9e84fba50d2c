package org.benchleaf.publish;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Entities;

/** A finished page as a chapter of a book: XHTML, without what only a browser or the site can do. */
final class BookChapter {

    private final FinishedPage finished;
    private final Document page;
    private final String path;
    private final Set<String> ids = new HashSet<>();
    private final Set<String> drawnOn;

    /**
     * A chapter that knows its own anchors, but not yet where its links lead.
     *
     * @param path of the page
     * @param inBook whether a file can stand in the book, by its path in the site
     */
    BookChapter(String path, FinishedPage finished, Predicate<String> inBook) {
        this.finished = finished;
        this.page = finished.document();
        this.path = path;
        this.drawnOn = finished.toRead(inBook);
        page.select("image[href]").forEach(picture -> picture.attr("xlink:href", picture.attr("href")).removeAttr("href"));
        page.select("[id]").forEach(element -> ids.add(element.id()));
        page.select("svg").attr("xmlns", "http://www.w3.org/2000/svg").attr("xmlns:xlink", "http://www.w3.org/1999/xlink");
        page.select("math").attr("xmlns", "http://www.w3.org/1998/Math/MathML");
        page.outputSettings().syntax(Document.OutputSettings.Syntax.xml).escapeMode(Entities.EscapeMode.xhtml);
    }

    /** Points the links to the chapters at hand; those elsewhere, and to what was left out, become words. */
    void relink(Map<String, BookChapter> chapters) {
        finished.relink((to, there) -> {
            int hash = there.indexOf('#');
            BookChapter chapter = chapters.get(hash < 0 ? there : there.substring(0, hash));
            if (chapter == null || hash >= 0 && !chapter.ids.contains(there.substring(hash + 1))) {
                return "";
            }
            return to.replaceFirst("\\.html(?=#|$)", ".xhtml");
        });
    }

    /** Its path in the book. */
    String path() {
        return path.replaceFirst("\\.html$", ".xhtml");
    }

    /** Its title, as the page's own. */
    String title() {
        return page.select("meta[property=og:title]").attr("content");
    }

    /** The paths of the pictures that it shows. */
    Set<String> drawnOn() {
        return drawnOn;
    }

    /** Its sections, each a heading with an anchor. */
    List<Element> sections() {
        return page.select("main > section[id]:has(h2)");
    }

    /** Whether it holds an element of that name. */
    boolean holds(String name) {
        return !page.select(name).isEmpty();
    }

    /** What the manifest must say of it. */
    String properties() {
        return String.join(" ", Stream.of("mathml", "svg").filter(kind -> holds(kind.equals("svg") ? "svg" : "math")).toList());
    }

    /** The chapter's file. */
    SiteFile file(String style) {
        String language = page.selectFirst("html").attr("lang");
        Element main = page.selectFirst("main");
        main.tagName("section").attr("epub:type", "chapter").attr("role", "doc-chapter")
                .attr("aria-label", title());
        return SiteFile.text(path(), EpubBook.XML + "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" xmlns:epub="
                + "\"http://www.idpf.org/2007/ops\" lang=\"" + language + "\" xml:lang=\"" + language + "\" dir=\""
                + page.selectFirst("html").attr("dir").toLowerCase(Locale.ROOT) + "\">\n<head><meta charset=\"utf-8\"/><title>"
                + Entities.escape(page.title()) + "</title><link rel=\"stylesheet\" type=\"text/css\" href=\""
                + "../".repeat((int) path.chars().filter(c -> c == '/').count()) + style + "\"/></head>\n"
                + page.body().outerHtml() + "\n</html>\n");
    }
}
