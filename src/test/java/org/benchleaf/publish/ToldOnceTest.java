package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.benchleaf.DemoSite;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Looks on the pages of the demo for what is told twice. */
class ToldOnceTest {

    private static final Map<String, Document> PAGES = new TreeMap<>();

    @BeforeAll
    static void read() {
        DemoSite.made().files().stream().filter(SiteFile::isPage).forEach(file ->
                PAGES.put(file.path(), Jsoup.parse(new String(file.bytes(), StandardCharsets.UTF_8))));
    }

    @Test
    void the_standing_notice_stands_once_on_a_page() {
        String notice = "They are not instructions for yours";
        assertThat(PAGES.get("cases/tide-table/index.html").text()).contains(notice);
        assertThat(PAGES.get("cases/tide-table/steps.html").text()).contains(notice);
        PAGES.forEach((path, page) -> assertThat(page.text().split(notice, -1).length - 1).as(path).isLessThanOrEqualTo(1));
    }

    @Test
    void that_all_is_invented_stands_once_on_a_case_study() {
        caseStudies().forEach((path, page) ->
                assertThat(page.text().split("invented for the demo|made for the demo", -1)).as(path).hasSize(2));
    }

    @Test
    void a_number_of_a_case_study_opens_once_to_its_working() {
        caseStudies().forEach((path, page) -> {
            List<String> workings = page.select("details.working").eachAttr("data-figure");
            assertThat(workings).as(path).isNotEmpty().doesNotHaveDuplicates();
        });
    }

    /** The story of the tide table tells the change of its pH, so the list of all numbers leads to the working there. */
    @Test
    void a_number_that_the_story_has_opened_leads_there() {
        Document page = PAGES.get("cases/tide-table/index.html");
        String number = page.select("#gave .key-numbers a[href=#working-results-pH-change]").text();
        assertThat(number).isEqualTo(page.select("#working-results-pH-change").first().parent().select(".working__number").text());
    }

    private static Map<String, Document> caseStudies() {
        Map<String, Document> studies = new TreeMap<>(PAGES);
        studies.keySet().removeIf(path -> !path.matches("cases/[a-z-]+/index\\.html"));
        assertThat(studies).hasSize(5);
        return studies;
    }
}
