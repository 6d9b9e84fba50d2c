package org.benchleaf.publish;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Entities;

/** A finished page on its way to a chapter of a book: XHTML, without what only a browser or the site can do. */
final class BookChapter {

    private final FinishedPage finished;
    private final Document page;
    private final String path;
    private final Set<String> ids = new HashSet<>();
    private final Set<String> drawnOn;

    /**
     * A chapter as it stands in the book.
     *
     * @param path in the book
     * @param title the page's own
     * @param sections each with a heading and an anchor
     * @param properties what the manifest must say of it
     * @param isVisual whether pictures stand in it
     * @param hasFormulas whether formulas stand in it
     * @param drawnOn the paths of the pictures that it shows
     * @param file the chapter itself
     */
    record Finished(String path, String title, List<Section> sections, String properties, boolean isVisual, boolean hasFormulas,
            Set<String> drawnOn, SiteFile file) {
    }

    /** A section of a chapter. */
    record Section(String anchor, String heading) {
    }

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

    /** Its anchors. */
    Set<String> ids() {
        return ids;
    }

    /**
     * The chapter; links to those that are not in the book, and to what was left out, become words.
     *
     * @param anchors of a chapter of the book, by the path of its page; empty if the page is not in it
     * @param style of the book
     */
    Finished finished(Function<String, Optional<Set<String>>> anchors, String style) {
        finished.relink((to, there) -> {
            int hash = there.indexOf('#');
            Optional<Set<String>> known = anchors.apply(hash < 0 ? there : there.substring(0, hash));
            if (known.isEmpty() || hash >= 0 && !known.get().contains(there.substring(hash + 1))) {
                return "";
            }
            return to.replaceFirst("\\.html(?=#|$)", ".xhtml");
        });
        List<Section> sections = page.select("main > section[id]:has(h2)").stream()
                .map(section -> new Section(section.id(), section.selectFirst("h2").text())).toList();
        return new Finished(path(), title(), sections, properties(), holds("img, svg"), holds("math"), drawnOn, file(style));
    }

    private String path() {
        return path.replaceFirst("\\.html$", ".xhtml");
    }

    private String title() {
        return page.select("meta[property=og:title]").attr("content");
    }

    private boolean holds(String name) {
        return !page.select(name).isEmpty();
    }

    private String properties() {
        return String.join(" ", Stream.of("mathml", "svg").filter(kind -> holds(kind.equals("svg") ? "svg" : "math")).toList());
    }

    private SiteFile file(String style) {
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
