package org.benchleaf.browser;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.browser.StyleText.StyleRule;

/** What the style sheets and scripts of a page must and must not do. */
final class AssetRules {

    private static final Pattern SHOWS = Pattern.compile("(^|[;{\\s])(display|visibility|opacity|clip|clip-path|content|height|"
            + "max-height|block-size|max-block-size|transform|inset[a-z-]*|left|right|top|bottom)\\s*:");
    private static final Pattern FORBIDDEN_IN_SCRIPTS = Pattern.compile("\\bfetch\\s*\\(|XMLHttpRequest|\\bimport\\s*\\(|"
            + "serviceWorker|new Worker|document\\.cookie|WebSocket|EventSource|sendBeacon|\\beval\\s*\\(|new Function|"
            + "setAttribute\\(\\s*[\"']style|\\.innerHTML\\s*=|document\\.write");
    /** The one script that asks the browser to keep the site; it has a rule of its own. */
    private static final String KEEPER = "/offline.js";
    private static final Pattern STORED = Pattern.compile("localStorage\\.(?:get|set|remove)Item\\(\\s*([\"'][^\"']*[\"']|[^,)]+)");

    private AssetRules() {
    }

    static List<PageRule> of(SiteUnderTest site) {
        return List.of(
                new PageRule("what a hover shows, the focus shows", "1.4.13, 2.1.1", page -> sheets(site, page)
                        .flatMap(AssetRules::hoverOnly)),
                new PageRule("no style takes the focus away", "2.4.7", page -> sheets(site, page)
                        .flatMap(sheet -> StyleText.rules(sheet).stream())
                        .filter(rule -> rule.body().matches("(?s).*\\boutline(-style|-width)?\\s*:\\s*(none|0)\\b.*"))
                        .map(rule -> rule.selector() + " { " + rule.body() + " }")),
                new PageRule("styles load nothing from elsewhere", "house: works offline", page -> sheets(site, page)
                        .flatMap(sheet -> found(Pattern.compile("url\\(\\s*[\"']?(?:[a-z]+:)?//[^)]*\\)|@import[^;]*;"), sheet))),
                new PageRule("styles honour the reader's settings", "house, CSS Media Queries 5", page -> {
                    String all = String.join("\n", sheets(site, page).toList());
                    return Stream.of("prefers-color-scheme", "prefers-contrast", "forced-colors", "prefers-reduced-motion", "print")
                            .filter(setting -> !all.contains(setting)).map(setting -> "no style asks for " + setting);
                }),
                new PageRule("scripts ask nothing of the network", "house: works offline", page -> scripts(site, page)
                        .flatMap(script -> found(FORBIDDEN_IN_SCRIPTS, script))),
                new PageRule("what keeps the site asks only the server that it came from", "house: works offline",
                        page -> keepers(site, page).flatMap(AssetRules::asksBeforeItLooks)));
    }

    /** Keeping a site on a device is asked of the browser, where a server gave the page: it looks for that first. */
    private static Stream<String> asksBeforeItLooks(String script) {
        Matcher look = Pattern.compile("if \\([^;{]*/\\^https\\?:\\$/\\.test\\(location\\.protocol\\)\\) \\{ return; }").matcher(script);
        int from = look.find() ? look.end() : script.length();
        String rest = script.substring(from)
                .replaceAll("\"serviceWorker\" in navigator|navigator\\.serviceWorker\\.register\\(root \\+ ", "");
        return Stream.concat(found(FORBIDDEN_IN_SCRIPTS, script.substring(0, from)), found(FORBIDDEN_IN_SCRIPTS, rest));
    }

    private static Stream<String> sheets(SiteUnderTest site, WrittenPage page) {
        return page.find("link[rel=stylesheet]").stream().map(link -> text(site, page, link.attr("href")));
    }

    /** The scripts of the site but the index of the search, which is data, and what keeps the site on a device. */
    private static Stream<String> scripts(SiteUnderTest site, WrittenPage page) {
        return sources(page).filter(source -> !source.contains("search-index") && !source.endsWith(KEEPER))
                .map(source -> text(site, page, source));
    }

    private static Stream<String> keepers(SiteUnderTest site, WrittenPage page) {
        return sources(page).filter(source -> source.endsWith(KEEPER)).map(source -> text(site, page, source));
    }

    private static Stream<String> sources(WrittenPage page) {
        return page.find("script[src]").stream().map(script -> script.attr("src"));
    }

    private static String text(SiteUnderTest site, WrittenPage page, String address) {
        return new String(site.bytes(Addresses.resolved(page.path(), address)), StandardCharsets.UTF_8);
    }

    private static Stream<String> hoverOnly(String sheet) {
        List<StyleRule> rules = StyleText.rules(sheet);
        return rules.stream().filter(rule -> rule.selector().contains(":hover") && SHOWS.matcher(rule.body()).find())
                .filter(rule -> rules.stream().noneMatch(other -> other.body().equals(rule.body())
                        && other.selector().contains(":focus")))
                .filter(rule -> !rule.selector().contains(":focus"))
                .map(rule -> rule.selector() + " { " + rule.body() + " }");
    }

    private static Stream<String> found(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        return matcher.results().map(result -> result.group());
    }

    /** The keys under which a page's scripts keep something on the device, as they are written in them. */
    static Stream<String> keysKept(SiteUnderTest site, WrittenPage page) {
        return scripts(site, page).flatMap(script -> STORED.matcher(script).results().map(result -> result.group(1)));
    }
}
