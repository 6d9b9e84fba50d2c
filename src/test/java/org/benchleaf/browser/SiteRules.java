package org.benchleaf.browser;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What only several pages together can break. */
final class SiteRules {

    private SiteRules() {
    }

    static List<SiteRule> all() {
        return List.of(
                new SiteRule("titles are unlike each other", "2.4.2", SiteRules::twinTitles),
                new SiteRule("ways are the same everywhere", "3.2.3, 3.2.4", SiteRules::differentWays),
                new SiteRule("two ways to each page", "2.4.5", SiteRules::lonelyPages),
                new SiteRule("links arrive", "house", SiteRules::deadLinks));
    }

    /** Among the pages of one language: "Ethanol" is the name of the same thing in several. */
    private static Stream<Fault> twinTitles(SiteUnderTest site) {
        Map<String, String> first = new HashMap<>();
        return site.pages().stream().filter(page -> first.putIfAbsent(language(page) + " " + page.html().title(), page.path()) != null)
                .map(page -> new Fault("titles are unlike each other", page.path(), "\"" + page.html().title() + "\" is the title of "
                        + first.get(language(page) + " " + page.html().title()) + " too"));
    }

    private static String language(WrittenPage page) {
        return page.html().selectFirst("html").attr("lang");
    }

    private static Stream<Fault> differentWays(SiteUnderTest site) {
        return site.pages().stream().collect(Collectors.groupingBy(SiteRules::language))
                .values().stream().flatMap(SiteRules::differentWays);
    }

    /** Among the pages of one language. */
    private static Stream<Fault> differentWays(List<WrittenPage> pages) {
        Map<String, Long> counts = pages.stream().collect(Collectors.groupingBy(SiteRules::ways, Collectors.counting()));
        String usual = counts.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
        return pages.stream().filter(page -> !ways(page).equals(usual)).map(page ->
                new Fault("ways are the same everywhere", page.path(), ways(page) + " instead of " + usual));
    }

    private static String ways(WrittenPage page) {
        return page.find("body > header nav a").eachText() + " / " + page.find("body > footer nav:not([class*=language]) a").eachText();
    }

    /** Links from other pages and the search count as ways. */
    private static Stream<Fault> lonelyPages(SiteUnderTest site) {
        Map<String, Set<String>> ways = new HashMap<>();
        for (WrittenPage page : site.pages()) {
            page.find("a[href]").eachAttr("href").stream().filter(href -> !href.contains(":"))
                    .map(href -> Addresses.resolved(page.path(), href)).filter(target -> !target.equals(page.path()))
                    .forEach(target -> ways.computeIfAbsent(target, none -> new HashSet<>()).add(page.path()));
        }
        String index = Files.exists(site.root().resolve("assets/search-index.js"))
                ? new String(site.bytes("assets/search-index.js"), StandardCharsets.UTF_8) : "";
        return site.pages().stream().filter(page -> {
            int count = ways.getOrDefault(page.path(), Set.of()).size() + (index.contains(page.path()) ? 1 : 0);
            return count < 2;
        }).map(page -> new Fault("two ways to each page", page.path(), "reached from "
                + ways.getOrDefault(page.path(), Set.of())));
    }

    private static Stream<Fault> deadLinks(SiteUnderTest site) {
        Map<String, WrittenPage> pages = site.pages().stream().collect(Collectors.toMap(WrittenPage::path, page -> page));
        return site.pages().stream().flatMap(page -> page.find("a[href], link[href], script[src], img[src]").stream()
                .map(element -> element.hasAttr("href") ? element.attr("href") : element.attr("src"))
                .filter(address -> !address.matches("[a-z]+:.*")).distinct()
                .filter(address -> !arrives(site, pages, page, address))
                .map(address -> new Fault("links arrive", page.path(), "nothing is at " + address)));
    }

    private static boolean arrives(SiteUnderTest site, Map<String, WrittenPage> pages, WrittenPage from, String address) {
        String target = address.startsWith("#") ? from.path() : Addresses.resolved(from.path(), address);
        int hash = address.indexOf('#');
        if (hash >= 0 && pages.containsKey(target)) {
            return pages.get(target).html().getElementById(address.substring(hash + 1)) != null;
        }
        return Files.isRegularFile(site.root().resolve(target));
    }
}
