package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.SiteComposer;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.Evidence;
import org.benchleaf.page.Page;
import org.benchleaf.read.AuthorGuideReader;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** What the shared pages weigh where a studio has published for many years. */
class ManyCasesTest {

    private static final int FEW = 100;
    private static final int MANY = 390;
    /** A link with its address, title and kind of object in one short line; bytes before packing. */
    private static final int MOST_A_CASE = 200;

    @Test
    void a_shared_page_grows_by_one_short_line_a_case_at_most() {
        Map<String, Integer> few = weights(FEW);
        Map<String, Integer> many = weights(MANY);

        assertThat(many).allSatisfy((path, weight) -> {
            if (few.containsKey(path)) {
                assertThat((weight - few.get(path)) / (MANY - FEW)).as(path).isLessThanOrEqualTo(MOST_A_CASE);
            }
        });
    }

    @Test
    void a_source_that_many_cases_cite_names_some_and_counts_the_rest() {
        Element source = page("sources.html").selectFirst(".bibliography__entry:has(a[href^=cases/])");

        assertThat(source.select("a[href^=cases/]")).hasSize(12);
        assertThat(source.text()).endsWith("and 378 cases more");
    }

    private static Document page(String path) {
        return pages(MANY).stream().filter(page -> page.path().equals(path)).map(publisher()::publish)
                .map(file -> Jsoup.parse(new String(file.bytes(), StandardCharsets.UTF_8))).findFirst().orElseThrow();
    }

    private static Map<String, Integer> weights(int count) {
        Map<String, Integer> weights = new HashMap<>();
        pages(count).stream().map(publisher()::publish).forEach(file -> weights.put(file.path(), file.bytes().length));
        // The library's last page is as long as there are cases left for it.
        weights.keySet().removeIf(path -> path.matches("library-\\d+\\.html"));
        return weights;
    }

    private static SitePublisher publisher() {
        return SitePublisher.with(Path.of("templates"), (caseId, picture) -> List.of(new Rendition(
                "cases/" + caseId + "/pictures/" + picture + "-480.jpg", 480, 640)));
    }

    private static List<Page> pages(int count) {
        DemoSite demo = DemoSite.made();
        CaseCard card = demo.cases().stream().filter(one -> one.card().id().equals("tide-table")).findFirst()
                .orElseThrow().card();
        return SiteComposer.compose(demo.library(), IntStream.rangeClosed(1, count).mapToObj(n -> copy(card, n)).toList(),
                List.of(), AuthorGuideReader.read(), Audience.EVERYBODY).pages();
    }

    private static CaseCard copy(CaseCard card, int number) {
        String id = "case-" + number;
        return new CaseCard(id, card.title() + ", sheet " + number, card.summary(), card.language(), card.level(), card.kind(),
                card.technique(), card.damages(), card.materials(), card.substances(), card.steps(), card.picture(), card.pictureAlt(),
                card.sources(), card.found(), card.pages().stream().map(path -> path.replace(card.id(), id)).toList(),
                card.pictureFiles(), card.paper(), card.evidence().stream().map(one -> new Evidence(one.measure(), one.kind(), one.like(),
                        one.unit(), one.apart(), one.because(), one.reaches(), one.address().replace(card.id(), id),
                        one.file().replace(card.id(), id))).toList(), card.made(), card.lastChange(), card.translated(), card.retoldFrom());
    }
}
