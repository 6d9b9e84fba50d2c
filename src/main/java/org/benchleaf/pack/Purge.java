package org.benchleaf.pack;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * Takes out of a finished file what leads to files that are taken down: entries of lists, pictures with their words,
 * lines of the search's index. It needs neither the content nor the templates, so that nothing in them can stop it.
 *
 * @param gone paths of the files that are taken down
 * @param titles of cases of which nothing stays; no page that led to one may name it any more
 */
record Purge(Set<String> gone, Set<String> titles) {

    private static final String LIST_ITEMS = "li, tr, dd, dt, figure, p";

    /**
     * The file without what leads to the files taken down.
     *
     * @param path of the file in the site
     * @return the same text if it leads to none of them; empty if what is left would still tell of them
     */
    Optional<String> of(String path, String text) {
        if (path.endsWith(".html")) {
            return page(path, text);
        }
        if (gone.stream().noneMatch(text::contains)) {
            return Optional.of(text);
        }
        return path.endsWith(".csv") ? rows(text) : path.endsWith(".js") || path.endsWith(".xml") || path.endsWith(".json") ? lines(text)
                : Optional.empty();
    }

    private Optional<String> page(String path, String text) {
        Document page = Jsoup.parse(text);
        page.outputSettings().prettyPrint(false);
        boolean changed = false;
        for (Element element : page.getAllElements()) {
            if (leadsToGone(path, element) && element.closest("body") != null) {
                item(element).remove();
                changed = true;
            }
        }
        changed |= forgetPicture(page);
        if (!changed) {
            return Optional.of(text);
        }
        page.select("script[type=application/ld+json]").forEach(Element::remove);
        String words = page.text();
        boolean tells = titles.stream().anyMatch(words::contains)
                || page.getAllElements().stream().anyMatch(element -> leadsToGone(path, element));
        return tells ? Optional.empty() : Optional.of(page.outerHtml());
    }

    /** The picture beside a link to the page is named by its whole address. */
    private boolean forgetPicture(Document page) {
        boolean isGone = page.select("meta[property=og:image]").stream().map(meta -> meta.attr("content"))
                .anyMatch(address -> gone.stream().anyMatch(path -> address.endsWith("/" + path)));
        if (isGone) {
            page.select("meta[property^=og:image]").remove();
        }
        return isGone;
    }

    private boolean leadsToGone(String path, Element element) {
        for (Attribute attribute : element.attributes()) {
            if (attribute.getKey().equals("srcset")) {
                for (String choice : attribute.getValue().split(",")) {
                    if (isGone(path, choice.strip().split(" ")[0])) {
                        return true;
                    }
                }
            } else if (PageScan.ADDRESSES.contains(attribute.getKey()) && isGone(path, attribute.getValue())) {
                return true;
            }
        }
        return false;
    }

    private boolean isGone(String path, String address) {
        Target target = Target.of(path, new PageScan.Link(address, false, false));
        return target.kind() == Target.Kind.INSIDE && gone.contains(target.path());
    }

    /** What goes with a link: its entry in a list; with a picture: its words, and what compares it with another. */
    private static Element item(Element element) {
        if (element.normalName().equals("a")) {
            return nearest(element, LIST_ITEMS);
        }
        Element pair = element.closest(".comparison");
        return pair == null ? nearest(element, "figure, .photo") : pair;
    }

    private static Element nearest(Element element, String wanted) {
        Element found = element.closest(wanted);
        return found == null ? element : found;
    }

    /** The rows of a table of many cases without those that lead to what is gone; each of its rows is one line. */
    private Optional<String> rows(String text) {
        String left = text.lines().filter(line -> gone.stream().noneMatch(line::contains))
                .collect(Collectors.joining("\r\n", "", "\r\n"));
        return titles.stream().anyMatch(left::contains) ? Optional.empty() : Optional.of(left);
    }

    /** A script, a feed or a map of the site, which is a list with one entry a line; of any other form nothing is known. */
    private Optional<String> lines(String text) {
        boolean listed = text.lines().filter(line -> gone.stream().anyMatch(line::contains)).allMatch(Purge::isEntry);
        // JSON allows no comma after the last entry of a list.
        return listed ? Optional.of(text.lines().filter(line -> gone.stream().noneMatch(line::contains))
                .collect(Collectors.joining("\n", "", "\n")).replace("},\n]", "}\n]")) : Optional.empty();
    }

    private static boolean isEntry(String line) {
        return line.startsWith("{") && (line.endsWith("}") || line.endsWith("},")) || isElement(line, "entry") || isElement(line, "url");
    }

    private static boolean isElement(String line, String name) {
        return line.startsWith("<" + name) && line.endsWith("</" + name + ">");
    }
}
