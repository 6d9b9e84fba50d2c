package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.compose.part.WebAddress;
import org.benchleaf.compose.part.XmlText;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;

/**
 * Lists the pages of the site for search engines (Sitemaps protocol 0.9), and says where the list is. A page bears no day:
 * that of a treatment is not the day on which its page was written.
 */
public final class SiteMap {

    /** As many addresses as one file may hold (Sitemaps protocol 0.9, "Using Sitemap index files"). */
    static final int IN_ONE_FILE = 50_000;
    private static final String NAMESPACE = "http://www.sitemaps.org/schemas/sitemap/0.9";

    private final WebAddress web;
    private final List<String> pages;

    private SiteMap(WebAddress web, List<String> pages) {
        this.web = web;
        this.pages = pages;
    }

    /** The map of a site; empty if it has no address on the web or is not for everybody. */
    public static Optional<SiteMap> of(SiteDesk desk, List<Page> ofSite) {
        return desk.web().map(web -> new SiteMap(web, Stream.concat(ofSite.stream().map(Page::path),
                desk.cards().stream().flatMap(SiteMap::pages)).sorted().distinct().toList()));
    }

    /** Those of a case in every language; the protocol has no word for what is translated, which the pages tell themselves. */
    private static Stream<String> pages(CaseCard card) {
        return Stream.concat(card.pages().stream(), card.translated().stream().flatMap(there -> there.pages().stream()));
    }

    public List<DataFile> files() {
        List<DataFile> files = new ArrayList<>();
        int parts = (pages.size() + IN_ONE_FILE - 1) / IN_ONE_FILE;
        if (parts == 1) {
            files.add(new DataFile(Paths.siteMap(0), list("urlset", "url", pages)));
        } else {
            List<String> paths = new ArrayList<>();
            for (int part = 1; part <= parts; part++) {
                paths.add(Paths.siteMap(part));
                files.add(new DataFile(Paths.siteMap(part), list("urlset", "url", pages.subList((part - 1) * IN_ONE_FILE,
                        Math.min(part * IN_ONE_FILE, pages.size())))));
            }
            files.add(new DataFile(Paths.siteMap(0), list("sitemapindex", "sitemap", paths)));
        }
        // Programs look for this file at the top of a host alone (RFC 9309, 2.3).
        if (web.isWholeHost()) {
            files.add(new DataFile(Paths.ROBOTS, "User-agent: *\nAllow: /\nSitemap: " + web.to(Paths.siteMap(0)) + "\n"));
        }
        return files;
    }

    private String list(String root, String each, List<String> paths) {
        return XmlText.document(root, NAMESPACE, xml -> paths.forEach(path ->
                xml.line().element(each, entry -> entry.element("loc", web.to(path)))));
    }
}
