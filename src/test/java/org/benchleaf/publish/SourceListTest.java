package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.DemoSite;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Holds the citations of the demo against its list of sources. */
class SourceListTest {

    private static final Pattern NUMBERED = Pattern.compile("\\[(\\d+)\\].*");
    private static final Map<String, Document> PAGES = new TreeMap<>();

    @BeforeAll
    static void read() {
        DemoSite.made().files().stream().filter(SiteFile::isPage).forEach(file ->
                PAGES.put(file.path(), Jsoup.parse(new String(file.bytes(), StandardCharsets.UTF_8))));
    }

    @Test
    void what_is_no_publication_stands_apart_and_without_a_number() {
        Document list = PAGES.get("sources.html");
        assertThat(list.select("#no-publications ul.bibliography > li").eachText()).hasSize(4)
                .anyMatch(entry -> entry.startsWith("Common practice: no published source"))
                .anyMatch(entry -> entry.startsWith("Definitions: "));
        assertThat(list.select("ol.bibliography > li").eachText()).hasSizeGreaterThan(100)
                .noneMatch(entry -> entry.startsWith("Common practice") || entry.startsWith("Definitions")
                        || entry.startsWith("suppliers"));
    }

    @Test
    void a_citation_has_the_number_of_its_entry_or_none() {
        List<String> published = PAGES.get("sources.html").select("ol.bibliography > li").eachAttr("id");
        PAGES.forEach((path, page) -> page.select("a[href*=sources.html#source-]").forEach(link -> {
            int at = published.indexOf(link.attr("href").replaceFirst(".*#", "")) + 1;
            Matcher numbered = NUMBERED.matcher(link.text());
            if (numbered.matches()) {
                assertThat(at).as(path + ": " + link.text()).isEqualTo(Integer.parseInt(numbered.group(1)));
            }
        }));
        assertThat(PAGES.get("cases/tide-table/index.html").select("a[href$=#source-common-practice]").eachText())
                .isNotEmpty().containsOnly("Common practice");
    }
}
