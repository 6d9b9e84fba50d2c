package org.benchleaf.browser;

import java.util.List;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;

/** What lets a page work from a file, with no network, under a strict policy. */
final class OfflineRules {

    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; "
            + "font-src 'self'; connect-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'self' file:";
    private static final String ADDRESSES = "img[src], script[src], link[href], source[src], video[src], audio[src], "
            + "iframe[src], object[data], embed[src], a[href], form[action], use[href], image[href], track[src]";
    private static final String LOADED = "img, script, link[rel=stylesheet], link[rel=icon], link[rel=preload], source, "
            + "video, audio, iframe, object, embed, use, image, track";

    private OfflineRules() {
    }

    static List<PageRule> all() {
        return List.of(
                new PageRule("the policy comes first", "CSP level 3", OfflineRules::policy),
                new PageRule("nothing is loaded from elsewhere", "house: works offline", page -> page.find(LOADED).stream()
                        .filter(element -> address(element).matches("(?i)([a-z][a-z0-9+.-]*:)?//.*")).map(Element::outerHtml)),
                new PageRule("links work from a file", "house, measured in three engines", OfflineRules::badLinks),
                new PageRule("scripts work from a file", "house, measured in three engines", OfflineRules::badScripts),
                new PageRule("no style or script in an element", "CSP level 3", OfflineRules::inline),
                new PageRule("drawings stand on their page", "house, measured in three engines", page -> page.find("use, image")
                        .stream().filter(use -> !use.attr("href").matches(use.normalName().equals("image")
                                ? "(?!.*:).*\\.(jpg|png)" : "#.*") || use.hasAttr("xlink:href"))
                        .map(Element::outerHtml)));
    }

    private static String address(Element element) {
        return Stream.of("src", "href", "data", "action").map(element::attr).filter(value -> !value.isEmpty())
                .findFirst().orElse("");
    }

    private static Stream<String> policy(WrittenPage page) {
        Element first = page.html().head().child(0);
        Element second = page.html().head().child(1);
        boolean right = first.hasAttr("charset") && second.attr("http-equiv").equalsIgnoreCase("content-security-policy");
        String said = second.attr("content").replaceAll("\\s+", " ").strip();
        return right && said.equals(POLICY) ? Stream.of() : Stream.of("the head starts " + first + second);
    }

    private static Stream<String> badLinks(WrittenPage page) {
        return page.find(ADDRESSES).stream().filter(element -> {
            String address = address(element).replaceFirst("[?#].*", "");
            return address.startsWith("/") || address.endsWith("/") && !address.matches("[a-z]+://.*")
                    || address.matches("\\.{1,2}") || address.matches("(?i)(javascript|file|data|ftp):.*") && element.is("a")
                    || address.contains("\\") || address.matches("(?i)file:.*");
        }).map(Element::outerHtml);
    }

    private static Stream<String> badScripts(WrittenPage page) {
        return Stream.concat(
                page.find("[integrity], [crossorigin], link[rel=manifest], link[rel=modulepreload]").stream(),
                page.find("script[src]").stream().filter(script ->
                        script.attr("type").equals("module") || !script.hasAttr("defer"))).map(Element::outerHtml);
    }

    private static Stream<String> inline(WrittenPage page) {
        Stream<Element> scripts = page.find("script:not([src])").stream()
                .filter(script -> !script.attr("type").equals("application/ld+json"));
        Stream<Element> handlers = page.find("*").stream().filter(element -> element.attributes().asList().stream()
                .anyMatch(attribute -> attribute.getKey().startsWith("on")
                        || attribute.getKey().equals("style") && !page.live()));
        return Stream.of(scripts, handlers, page.find("style").stream()).flatMap(all -> all).map(WrittenPage::shown);
    }
}
