package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.Page;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Looks at every page of the demo as it is written. */
class DemoPagesTest {

    private static DemoSite demo;
    private static final Map<String, Document> PAGES = new HashMap<>();

    @BeforeAll
    static void make() {
        demo = DemoSite.made();
        demo.files().stream().filter(SiteFile::isPage).forEach(file ->
                PAGES.put(file.path(), Jsoup.parse(new String(file.bytes(), StandardCharsets.UTF_8))));
    }

    @Test
    void every_page_is_sound_html() throws Exception {
        List<String> findings = new ArrayList<>();
        for (SiteFile file : demo.files()) {
            if (file.isPage()) {
                findings.addAll(HtmlChecker.findings(file.path(), file.bytes()));
            }
        }
        assertThat(findings).isEmpty();
    }

    @Test
    void every_link_arrives() {
        Set<String> files = new HashSet<>();
        demo.files().forEach(file -> files.add(file.path()));
        List<String> dead = new ArrayList<>();
        PAGES.forEach((path, page) -> {
            for (Element link : page.select("a[href], link[href], script[src]")) {
                String href = link.hasAttr("href") ? link.attr("href") : link.attr("src");
                if (href.matches("[a-z]+:.*")) {
                    continue;
                }
                String target = java.net.URI.create("site:///" + path).resolve(href).getPath().substring(1);
                String fragment = href.contains("#") ? href.substring(href.indexOf('#') + 1) : "";
                if (href.startsWith("/") || !files.contains(target)
                        || !fragment.isEmpty() && PAGES.get(target).getElementById(fragment) == null) {
                    dead.add(path + " -> " + href);
                }
            }
        });
        assertThat(dead).isEmpty();
    }

    @Test
    void every_page_can_be_reached_from_the_library() {
        Set<String> reached = new HashSet<>();
        List<String> next = new ArrayList<>(List.of("index.html"));
        while (!next.isEmpty()) {
            String path = next.remove(0);
            if (reached.add(path)) {
                PAGES.get(path).select("a[href]").forEach(link -> {
                    String href = link.attr("href");
                    if (!href.matches("[a-z]+:.*")) {
                        String to = java.net.URI.create("site:///" + path).resolve(href).getPath().substring(1);
                        if (PAGES.containsKey(to)) {
                            next.add(to);
                        }
                    }
                });
            }
        }
        assertThat(reached).containsAll(PAGES.keySet());
    }

    @Test
    void titles_are_unique_and_headings_begin_once_and_skip_nothing() {
        assertThat(PAGES.values().stream().map(Document::title)).doesNotHaveDuplicates();
        PAGES.forEach((path, page) -> {
            assertThat(page.select("h1")).as(path).hasSize(1);
            int before = 0;
            for (Element heading : page.select("h1, h2, h3, h4")) {
                int level = heading.normalName().charAt(1) - '0';
                assertThat(level).as(path + ": " + heading.text()).isLessThanOrEqualTo(before + 1);
                before = level;
            }
        });
    }

    @Test
    void no_page_styles_itself_runs_script_of_its_own_or_asks_another_host() {
        PAGES.forEach((path, page) -> {
            assertThat(page.select("[style], [onclick], [onload], style")).as(path).isEmpty();
            assertThat(page.select("script:not([type])").eachText()).as(path).allMatch(String::isEmpty);
            assertThat(page.select("[src], link, image").eachAttr("src")).as(path).noneMatch(src -> src.contains("//"));
            assertThat(page.select("meta[http-equiv=Content-Security-Policy]")).as(path).hasSize(1);
        });
    }

    @Test
    void the_public_page_tells_no_strength_unless_the_case_allows_it() {
        demo.cases().forEach(pages -> pages.pages().stream().filter(page -> page.kind().equals("case-study"))
                .filter(page -> demo.withholdsStrengths(pages.card().id()))
                .map(Page::path).forEach(path -> assertThat(PAGES.get(path).select("main").text())
                        .doesNotContainPattern("\\d[\\s\u202F]?(% (v/v|m/v|m/m)|mol/L)")));
    }

    @Test
    void data_for_programs_is_told_on_the_page_too() throws Exception {
        for (Document page : PAGES.values()) {
            for (Element data : page.select("script[type=application/ld+json]")) {
                var json = new com.fasterxml.jackson.databind.ObjectMapper().readTree(data.data());
                assertThat(page.body().text()).contains(json.get("name").asText());
                if (json.has("description")) {
                    assertThat(page.body().text()).contains(json.get("description").asText());
                }
                assertThat(json.get("@context").asText()).isEqualTo("https://schema.org");
            }
        }
    }

    @Test
    void each_term_is_linked_once_on_a_page_and_never_in_a_heading() {
        PAGES.forEach((path, page) -> {
            assertThat(page.select("a.term").eachAttr("href")).as(path).doesNotHaveDuplicates();
            assertThat(page.select("h1 a.term, h2 a.term, h3 a.term, a a")).as(path).isEmpty();
        });
    }
}
