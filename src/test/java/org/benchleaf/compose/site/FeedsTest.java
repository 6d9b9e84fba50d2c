package org.benchleaf.compose.site;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.rometools.rome.feed.synd.SyndEntry;
import com.rometools.rome.feed.synd.SyndFeed;
import com.rometools.rome.io.SyndFeedInput;
import java.io.StringReader;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.SiteComposition;
import org.benchleaf.compose.cases.CasePages;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.model.AuthorGuide;
import org.benchleaf.page.DataFile;
import org.jdom2.Element;
import org.jdom2.Namespace;
import org.jdom2.input.SAXBuilder;
import org.junit.jupiter.api.Test;

/** Reads the feeds with a reader of others (ROME) and holds them against what RFC 4287 and JSON Feed 1.1 demand. */
class FeedsTest {

    private static final Namespace ATOM = Namespace.getNamespace("http://www.w3.org/2005/Atom");
    private static final String STUDIO = "https://tarn-quay.example/";

    @Test
    void a_feed_reader_finds_each_case_with_its_title_day_and_address() throws Exception {
        SyndFeed feed = new SyndFeedInput().build(new StringReader(text("feed.xml")));

        assertThat(feed.getFeedType()).isEqualTo("atom_1.0");
        assertThat(feed.getTitle()).isEqualTo(DemoSite.made().library().studio().name());
        List<CaseCard> cards = DemoSite.made().cases().stream().map(CasePages::card)
                .filter(card -> !card.lastChange().on().isEmpty()).toList();
        assertThat(cards).isNotEmpty();
        assertThat(feed.getEntries()).hasSameSizeAs(cards);
        for (CaseCard card : cards) {
            SyndEntry entry = feed.getEntries().stream().filter(each -> each.getTitle().equals(card.title())).findFirst().orElseThrow();
            assertThat(entry.getLink()).isEqualTo(STUDIO + "cases/" + card.id() + "/index.html");
            assertThat(LocalDate.ofInstant(entry.getUpdatedDate().toInstant(), ZoneOffset.UTC)).isEqualTo(card.lastChange().on());
            assertThat(entry.getDescription().getValue()).startsWith(card.summary()).contains(card.lastChange().what());
        }
    }

    /** RFC 4287, 4.1.1 (feed), 4.1.2 (entry), 3.3 (dates after RFC 3339) and 4.2.6 (an id is an absolute IRI, no two entries share it). */
    @Test
    void the_atom_feed_holds_what_its_standard_demands() throws Exception {
        Element feed = new SAXBuilder().build(new StringReader(text("feed.xml"))).getRootElement();

        assertThat(feed.getName()).isEqualTo("feed");
        assertThat(feed.getNamespace()).isEqualTo(ATOM);
        for (String once : List.of("id", "title", "updated")) {
            assertThat(feed.getChildren(once, ATOM)).as(once).hasSize(1);
        }
        assertThat(feed.getChild("author", ATOM).getChildText("name", ATOM)).isNotBlank();
        assertThat(feed.getChildren("link", ATOM)).extracting(link -> link.getAttributeValue("rel"), link -> link.getAttributeValue("href"))
                .containsExactly(org.assertj.core.groups.Tuple.tuple("self", STUDIO + "feed.xml"),
                        org.assertj.core.groups.Tuple.tuple("alternate", STUDIO));
        Set<String> ids = new HashSet<>();
        List<String> moments = new ArrayList<>();
        for (Element entry : feed.getChildren("entry", ATOM)) {
            for (String once : List.of("id", "title", "updated", "summary")) {
                assertThat(entry.getChildren(once, ATOM)).as(once).hasSize(1);
            }
            assertThat(ids.add(entry.getChildText("id", ATOM))).isTrue();
            assertThat(entry.getChild("link", ATOM).getAttributeValue("rel")).isEqualTo("alternate");
            moments.add(entry.getChildText("updated", ATOM));
        }
        assertThat(ids).allMatch(id -> java.net.URI.create(id).isAbsolute());
        assertThat(moments).isNotEmpty().allMatch(moment -> moment.matches("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\dZ"))
                .isSortedAccordingTo(java.util.Comparator.reverseOrder()).first().isEqualTo(feed.getChildText("updated", ATOM));
    }

    /** jsonfeed.org, version 1.1: required are version, title, items; of an item an id and a content. */
    @Test
    void the_json_feed_holds_what_its_standard_demands() throws Exception {
        JsonNode feed = new ObjectMapper().readTree(text("feed.json"));

        assertThat(feed.get("version").asText()).isEqualTo("https://jsonfeed.org/version/1.1");
        assertThat(feed.get("title").asText()).isNotBlank();
        assertThat(feed.get("feed_url").asText()).isEqualTo(STUDIO + "feed.json");
        assertThat(feed.get("authors").get(0).get("name").asText()).isNotBlank();
        assertThat(feed.get("items")).isNotEmpty().allSatisfy(item -> {
            assertThat(item.get("id").asText()).startsWith(STUDIO + "cases/").isEqualTo(item.get("url").asText());
            assertThat(item.get("content_text").asText()).isNotBlank();
            assertThat(item.get("date_modified").asText()).matches("\\d{4}-\\d\\d-\\d\\dT00:00:00Z");
        });
    }

    @Test
    void the_newest_come_first_and_old_ones_make_room() {
        List<CaseCard> cards = IntStream.rangeClosed(1, 60).mapToObj(n -> card("case-" + n,
                new CaseCard.LastChange(LocalDate.of(2026, 1, 1).plusDays(n).toString(), "", 0))).toList();

        String atom = atom(cards, Audience.EVERYBODY).orElseThrow();

        assertThat(atom).contains("case-60/", "case-11/").doesNotContain("case-10/");
        assertThat(atom.indexOf("case-60/")).isLessThan(atom.indexOf("case-59/"));
    }

    @Test
    void a_case_without_a_day_and_a_site_for_trainees_are_in_no_feed() {
        CaseCard dated = card("dated", new CaseCard.LastChange("2026-03-01", "", 0));
        CaseCard undated = card("undated", CaseCard.LastChange.NONE);

        assertThat(atom(List.of(dated, undated), Audience.PUBLIC).orElseThrow()).contains("dated/").doesNotContain("undated/");
        assertThat(atom(List.of(undated), Audience.PUBLIC)).isEmpty();
        assertThat(atom(List.of(dated), Audience.TRAINEES)).isEmpty();
    }

    private static Optional<String> atom(List<CaseCard> cards, Audience audience) {
        return new SiteComposition(DemoSite.made().library(), cards, List.of(), AuthorGuide.EMPTY, audience).files().stream()
                .filter(file -> file.path().equals("feed.xml")).map(DataFile::text).findFirst();
    }

    private static CaseCard card(String id, CaseCard.LastChange change) {
        return new CaseCard(id, "Poster " + id, "A poster.", "en", "foundation", "poster", "", List.of(), List.of(), List.of(), List.of(),
                "", "", List.of(), List.of(), List.of("cases/" + id + "/index.html"), List.of(), "", List.of(),
                List.of(), change, List.of(), "");
    }

    private static String text(String path) {
        return DemoSite.made().files().stream().filter(file -> file.path().equals(path)).findFirst().orElseThrow().text();
    }
}
