package org.benchleaf.read;

import java.util.ArrayList;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.safety.Cleaner;
import org.jsoup.safety.Safelist;

/** The second wall behind the Markdown renderer: only these elements and attributes, whatever came before. */
final class CleanHtml {

    private static final Safelist ALLOWED = Safelist.none()
            .addTags("p", "ul", "ol", "li", "em", "strong", "code", "pre", "blockquote", "hr", "br", "h1", "h2", "h3", "h4", "h5",
                    "h6", "table", "thead", "tbody", "tr", "th", "td", "a")
            .addAttributes("a", "href", "title")
            .addAttributes("ol", "start")
            .addProtocols("a", "href", LinkAddress.SCHEMES.toArray(String[]::new))
            .preserveRelativeLinks(true);

    private CleanHtml() {
    }

    /** The clean nodes before the first heading of a section and below each one, the headings left out. */
    static List<List<Node>> sections(String html) {
        // A base is needed to tell relative links from others; it does not appear in the result.
        Document dirty = Jsoup.parseBodyFragment(html, "https://relative.invalid/");
        Document clean = new Cleaner(ALLOWED).clean(dirty);
        clean.select("a").stream().filter(link -> !LinkAddress.isAllowed(link.attr("href"))).forEach(Node::unwrap);
        // A heading inside a quote or a list begins no section.
        clean.body().select("> * h1, > * h2").tagName("p");
        List<List<Node>> sections = new ArrayList<>(List.of(new ArrayList<>()));
        for (Node node : clean.body().childNodes()) {
            if (node instanceof Element element && isSectionHeading(element)) {
                sections.add(new ArrayList<>());
            } else {
                sections.get(sections.size() - 1).add(node);
            }
        }
        return sections;
    }

    private static boolean isSectionHeading(Element element) {
        return element.normalName().equals("h1") || element.normalName().equals("h2");
    }
}
