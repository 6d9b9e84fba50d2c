package org.benchleaf.compose;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;

/** Links each glossary term where one page uses it first, never inside a link, a heading or code. */
final class GlossaryLinks {

    private static final Set<String> CLOSED = Set.of("a", "h1", "h2", "h3", "h4", "h5", "h6", "code", "pre", "summary",
            "math", "svg", "caption", "th");

    private final GlossaryTerms terms;
    private final String glossaryHref;
    private final Set<String> used = new HashSet<>();

    GlossaryLinks(GlossaryTerms terms, String glossaryHref) {
        this.terms = terms;
        this.glossaryHref = glossaryHref;
    }

    /** The same HTML with terms not yet used on the page linked to the glossary. */
    Html link(Html html) {
        if (!terms.pattern().matcher(html.markup()).find()) {
            return html;
        }
        Document document = Jsoup.parseBodyFragment(html.markup());
        document.outputSettings().prettyPrint(false);
        linkWithin(document.body());
        return new Html(document.body().html());
    }

    private void linkWithin(Element element) {
        for (Node child : java.util.List.copyOf(element.childNodes())) {
            if (child instanceof TextNode text) {
                linkText(text);
            } else if (child instanceof Element inner && !CLOSED.contains(inner.normalName())) {
                linkWithin(inner);
            }
        }
    }

    private void linkText(TextNode node) {
        String text = node.getWholeText();
        Matcher matcher = terms.pattern().matcher(text);
        int from = 0;
        while (matcher.find()) {
            String id = terms.ids().get(matcher.group().toLowerCase(Locale.ROOT));
            if (id == null || !used.add(id)) {
                continue;
            }
            node.before(new TextNode(text.substring(from, matcher.start())));
            Element link = new Element("a").addClass("term")
                    .attr("href", glossaryHref + "#" + GlossaryTerms.anchor(id)).text(matcher.group());
            node.before(link);
            from = matcher.end();
        }
        if (from > 0) {
            node.text(text.substring(from));
        }
    }
}
