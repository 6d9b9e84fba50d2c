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
    void every_page_shows_the_icon_of_the_site_which_is_a_file_beside_it() {
        Set<String> files = new HashSet<>();
        demo.files().forEach(file -> files.add(file.path()));
        assertThat(PAGES).allSatisfy((path, page) -> assertThat(page.select("link[rel=icon]").eachAttr("href")).singleElement()
                .satisfies(href -> assertThat(files).contains(
                        java.net.URI.create("site:///" + path).resolve(href).getPath().substring(1))));
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
        // The studio is called the same in every language.
        assertThat(PAGES.values().stream().map(page -> page.selectFirst("html").attr("lang") + ": " + page.title()))
                .doesNotHaveDuplicates();
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

    /** With every space alike: a page sets those of a language's signs. */
    private static String plain(String text) {
        return text.replaceAll("[\\u00a0\\u202f]", " ");
    }

    @Test
    void data_for_programs_is_told_on_the_page_too() throws Exception {
        for (Document page : PAGES.values()) {
            for (Element data : page.select("script[type=application/ld+json]")) {
                var json = new com.fasterxml.jackson.databind.ObjectMapper().readTree(data.data());
                String told = plain(page.body().text());
                assertThat(told).contains(plain(json.get("name").asText()));
                if (json.has("description")) {
                    assertThat(told).contains(plain(json.get("description").asText()));
                }
                assertThat(json.get("@context").asText()).isEqualTo("https://schema.org");
            }
        }
    }

    /** Powdered lime irritates eyes and airways (its suppliers' sheets), which the clear stock made of it does not tell. */
    @Test
    void who_prepares_a_solution_is_told_what_its_ingredients_can_do_and_what_to_wear() {
        Document sheet = PAGES.get("cases/tide-table/preparation.html");

        assertThat(sheet.select("#briefing").text()).contains("Calcium hydroxide, powder", "H335", "H318",
                "Ethanol, 96", "H225", "The dust of lime burns eyes and airways", "A fitted respirator");
        assertThat(sheet.select("#prepare-lime-water").text()).contains("The dust of lime burns eyes and airways",
                "A fitted respirator", "Splash goggles");
        assertThat(sheet.select("#prepare-bath").text()).contains("Splash goggles").doesNotContain("respirator");
        assertThat(sheet.select("#prepare-paste").text()).contains("steam scalds").doesNotContain("respirator");
    }

    @Test
    void no_hazard_statement_is_printed_with_places_left_open() {
        PAGES.forEach((path, page) -> assertThat(page.select(".hazard, .hazard-card, .label, .briefing").text()).as(path)
                .doesNotContain("…", "...", "[or", "doctor/."));
        assertThat(PAGES.get("cases/tide-table/preparation.html").select(".label").text())
                .contains("Immediately call a POISON CENTER/doctor.");
    }

    @Test
    void on_every_step_sheet_the_briefing_comes_before_the_steps_and_a_hold_point_before_what_it_holds() {
        List<String> sheets = PAGES.keySet().stream().filter(path -> path.endsWith("/steps.html")).toList();
        assertThat(sheets).as("five cases, one in three other languages, one in French").hasSize(9);
        for (String path : sheets) {
            List<Element> all = PAGES.get(path).getAllElements();
            int briefing = all.indexOf(PAGES.get(path).getElementById("briefing"));
            assertThat(briefing).as(path).isPositive();
            boolean inEnglish = path.startsWith("cases/");
            assertThat(PAGES.get(path).select("#briefing .briefing__defer").text()).as(path).isNotBlank()
                    .satisfies(words -> assertThat(!inEnglish || words.contains("safety data sheet") && words.contains("local rules"))
                            .isTrue());
            PAGES.get(path).select(".strip__step").forEach(step ->
                    assertThat(all.indexOf(step)).as(path).isGreaterThan(briefing));
            PAGES.get(path).select(".strip__hold").forEach(hold -> {
                assertThat(hold.elementSiblingIndex()).as(path).isZero();
                assertThat(hold.text()).as(path).matches(inEnglish ? ".*Only the (supervisor|conservator) may let the work go on.*"
                        : "(?!.*(?:supervisor|conservator)\\b).*");
            });
        }
    }

    @Test
    void a_mouldy_sheet_is_never_handled_bare_and_what_touched_it_is_bagged() {
        Document sheet = PAGES.get("cases/flood-poster/steps.html");

        assertThat(sheet.select("#briefing").text()).contains("Ill from mould", "What mould has touched",
                "Work under extraction or in a fume hood");
        assertThat(sheet.select(".strip__step").not(":has(.strip__wear)").eachText()).isEmpty();
        assertThat(sheet.select("#step-air-dry").text()).contains("handling it stirs up spores", "A fitted respirator");
    }

    /** A step that names its mask and a caution that asks for one agree: the stricter stands with what is worn, and only there. */
    @Test
    void protective_equipment_stands_once_in_a_step() {
        assertThat(PAGES.get("cases/flood-poster/steps.html").select("#step-tests .strip__wear").text()).contains("FFP3")
                .doesNotContain("FFP2");
        PAGES.forEach((path, page) -> page.select(".strip__step").forEach(step -> assertThat(step.select(".strip__facts").text())
                .as(path + " " + step.id()).doesNotContainIgnoringCase("respirator").doesNotContainIgnoringCase("goggles")
                .doesNotContainIgnoringCase("nitrile gloves")));
    }

    @Test
    void burns_and_cuts_have_their_first_aid_where_wax_is_melted_and_blades_are_used() {
        assertThat(PAGES.get("cases/tide-table/steps.html").select("#briefing").text()).contains("Cool the burn at once",
                "Press something clean on the cut", "Into the sharps box");
        assertThat(PAGES.get("cases/flood-poster/steps.html").select("#briefing").text()).doesNotContain("Cool the burn");
    }

    @Test
    void every_label_names_its_kind_of_strength_and_either_its_hazards_or_that_none_follows() {
        Document sheet = PAGES.get("cases/tide-table/preparation.html");

        assertThat(sheet.select(".label").eachText()).hasSize(4).allMatch(label ->
                label.contains("Causes") || label.contains("Flammable") || label.contains("No hazard class follows"));
        assertThat(sheet.select(".label__strength").eachText()).anyMatch(strength -> strength.matches("brought to pH\\h8.5"));
    }

    @Test
    void each_term_is_linked_once_on_a_page_and_never_in_a_heading() {
        PAGES.forEach((path, page) -> {
            assertThat(page.select("a.term").eachAttr("href")).as(path).doesNotHaveDuplicates();
            assertThat(page.select("h1 a.term, h2 a.term, h3 a.term, a a")).as(path).isEmpty();
        });
    }
}
