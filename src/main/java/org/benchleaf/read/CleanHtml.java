package org.benchleaf.read;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.safety.Cleaner;
import org.jsoup.safety.Safelist;

/** The second wall behind the Markdown renderer: only these elements and attributes, whatever came before. */
final class CleanHtml {

    private static final Safelist ALLOWED = Safelist.none()
            .addTags("p", "ul", "ol", "li", "em", "strong", "code", "pre", "blockquote", "hr", "br", "h3", "h4", "h5",
                    "h6", "table", "thead", "tbody", "tr", "th", "td", "a")
            .addAttributes("a", "href", "title")
            .addAttributes("ol", "start")
            .addProtocols("a", "href", LinkAddress.SCHEMES.toArray(String[]::new))
            .preserveRelativeLinks(true);

    private CleanHtml() {
    }

    static String of(String html) {
        // A base is needed to tell relative links from others; it does not appear in the result.
        Document dirty = Jsoup.parseBodyFragment(html, "https://relative.invalid/");
        Document clean = new Cleaner(ALLOWED).clean(dirty);
        clean.outputSettings().prettyPrint(false);
        return clean.body().html().strip();
    }
}
