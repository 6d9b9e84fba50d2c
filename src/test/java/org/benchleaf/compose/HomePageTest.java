package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.cases.CasePages;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.model.AuthorGuide;
import org.benchleaf.model.PublicCare;
import org.benchleaf.publish.Pictures;
import org.benchleaf.publish.SitePublisher;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a stranger asks first is answered one link from the front page: how to keep a sheet, whether to bleach it, whom to ask. */
class HomePageTest {

    private static final SiteComposition SITE = new SiteComposition(DemoSite.made().library(),
            DemoSite.made().cases().stream().map(CasePages::card).toList(), List.of(), AuthorGuide.EMPTY, Audience.EVERYBODY);

    private static Document page(String path) {
        return Jsoup.parse(new String(SitePublisher.with(Path.of("templates"), Pictures.none()).publish(SITE.page(path).orElseThrow())
                .bytes(), StandardCharsets.UTF_8));
    }

    @Test
    void every_piece_of_advice_stands_on_it_once_and_tells_its_source() {
        Document page = page("at-home.html");
        for (PublicCare.Advice advice : DemoSite.made().library().reference().publicCare().advice()) {
            List<Element> told = page.select("dd").stream().filter(each ->
                    each.text().replace('\u202f', ' ').startsWith(advice.words())).toList();
            assertThat(told).as(advice.key()).hasSize(1);
            if (advice.source().equals("common practice, no source")) {
                assertThat(told.get(0).text()).as(advice.key()).endsWith("(common practice, no source)");
            } else {
                assertThat(told.get(0).select("a[href^=sources.html#]")).as(advice.key()).hasSize(1);
            }
        }
    }

    /** Washington Conservation Guild, how to find a conservator; Conservation Register: where conservators are listed. */
    @Test
    void whom_to_ask_leads_to_the_lists_of_conservators_themselves() {
        assertThat(page("at-home.html").select("#ask a[href^=http]").eachText())
                .contains("conservationregister.com", "culturalheritage.org");
    }

    /** AIC Wiki, BPG Bleaching: a cosmetic procedure for discoloration that cannot be lessened in a gentler way. */
    @Test
    void whether_one_may_bleach_is_answered_in_those_words() {
        Element answer = page("at-home.html").select("dt:containsOwn(May I bleach it at home?) + dd").first();
        assertThat(answer.text()).startsWith("No.");
    }

    /**
     * Northeast Document Conservation Center, leaflet 7.2: what is brushed and what is not; Blackwell, five foot-candles or 50 lux;
     * Heritage Preservation, wheel: what cannot be dried within 48 hours is frozen; Institute of Conservation: proposal with estimate.
     */
    @ParameterizedTest
    @CsvSource({"#home-1, May I clean it at home?, 'soft, dry brush'", "#home-1, Light, 50 lux",
            "#home-9, If something goes wrong, within 48 hours is frozen", "#home-9, If something goes wrong, In the first hours",
            "#ask, What does it cost?, an estimate"})
    void what_an_owner_asks_is_answered_under_its_heading(String section, String heading, String words) {
        assertThat(page("at-home.html").select(section + " dt:containsOwn(" + heading + ") ~ dd").eachText().stream()
                .map(text -> text.replace('\u202f', ' ').replace('\u00a0', ' ')).toList()).anyMatch(text -> text.contains(words));
    }

    /** A row that holds only for some sheets must not read as if it held for all. */
    @Test
    void advice_for_some_sheets_says_for_which() {
        assertThat(DemoSite.made().library().reference().publicCare().advice()).allSatisfy(advice ->
                assertThat(advice.sheets().isEmpty()).as(advice.key()).isEqualTo(advice.where().isEmpty()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"nav.ways", "nav.foot__ways"})
    void the_ways_of_the_front_page_lead_to_it_and_to_the_studio(String ways) {
        Document front = page("index.html");
        assertThat(front.select(ways + " a").eachAttr("href")).contains("at-home.html", "#studio");
        assertThat(front.selectFirst("#studio a[href=mailto:desk@tarn-quay.example]").text()).isEqualTo("desk@tarn-quay.example");
    }
}
