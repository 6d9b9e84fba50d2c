package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.cases.CasePages;
import org.benchleaf.compose.cases.TranslatedPages;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.SearchEntry;
import org.benchleaf.compose.part.Stems;
import org.benchleaf.compose.part.WordList;
import org.benchleaf.compose.site.SearchIndex;
import org.benchleaf.model.AuthorGuide;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Page;
import org.benchleaf.publish.Pictures;
import org.benchleaf.publish.SitePublisher;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** The library, the advice for owners, the glossary and the search stand in each language in which a case is told. */
class TranslatedSiteTest {

    private static final List<CaseCard> CARDS = DemoSite.made().cases().stream().map(CasePages::card).toList();

    private static SiteComposition site(List<CaseCard> cards) {
        return new SiteComposition(DemoSite.made().library(), cards, List.of(), AuthorGuide.EMPTY, Audience.EVERYBODY);
    }

    private static Document page(String path) {
        SiteComposition site = site(CARDS);
        String html = html(site.page(path).orElseThrow());
        return Jsoup.parse(site.translationOf(path).map(there -> there.marked(html, html(site.page(there.originalOf(site.page(path)
                .orElseThrow())).orElseThrow()))).orElse(html));
    }

    private static String html(Page page) {
        return new String(SitePublisher.with(Path.of("templates"), Pictures.none()).publish(page).bytes(), StandardCharsets.UTF_8);
    }

    @Test
    void each_language_of_a_case_has_a_library_advice_for_owners_a_glossary_and_a_search() {
        assertThat(site(CARDS).translated().stream().collect(Collectors.toMap(TranslatedPages::language, Function.identity())))
                .containsOnlyKeys("ar", "cy", "fr").allSatisfy((language, there) -> assertThat(there.pages()).extracting(Page::path)
                        .containsExactly(language + "/index.html", language + "/at-home.html",
                                language + "/glossary.html", language + "/search.html"));
        List<CaseCard> untold = CARDS.stream().filter(card -> card.translated().isEmpty()).toList();
        assertThat(untold).isNotEmpty();
        assertThat(site(untold).translated()).isEmpty();
        assertThat(html(site(untold).page("index.html").orElseThrow())).doesNotContain("hreflang");
    }

    @Test
    void cases_that_are_told_in_it_come_first_and_the_others_stand_as_they_are() {
        Document page = page("fr/index.html");
        List<String> links = page.select(".case-list__title a").eachAttr("href");
        assertThat(links).hasSize(CARDS.size());
        assertThat(links.subList(0, 2)).containsExactlyInAnyOrder("cases/ferry-letter/index.html", "cases/tide-table/index.html");
        assertThat(links.subList(2, links.size())).allMatch(link -> link.startsWith("../cases/"));
        assertThat(page.select(".case-list__title").subList(0, 2)).noneMatch(title -> title.hasAttr("lang"));
        assertThat(page.select(".case-list__title").subList(2, links.size())).allMatch(title -> title.attr("lang").equals("en"));
        assertThat(page.selectFirst(".opening__summary").text()).startsWith("Un atelier inventé");
    }

    @Test
    void what_stands_in_the_language_of_another_case_runs_in_its_own_direction_and_with_its_own_commas() {
        Document page = page("ar/index.html");
        assertThat(page.select("main [lang=en]")).isNotEmpty().allMatch(each -> each.attr("dir").equals("ltr"));
        assertThat(page.select(".case-list__facts dd[lang=en], .case-list__facts dd [lang=en]").eachText())
                .contains("plan, cyanotype", "surface dirt, tear, fading, buckling");
        assertThat(page("fr/index.html").select("main [lang=en][dir]")).isEmpty();
    }

    @Test
    void the_switch_leads_from_each_to_the_same_page_in_the_others() {
        assertThat(page("index.html").select("a[hreflang]").eachAttr("href"))
                .containsExactlyInAnyOrder("ar/index.html", "cy/index.html", "fr/index.html");
        assertThat(page("ar/search.html").select("a[hreflang]").eachAttr("href"))
                .containsExactlyInAnyOrder("../search.html", "../cy/search.html", "../fr/search.html");
        assertThat(page("ar/search.html").selectFirst("html").attr("dir")).isEqualTo("rtl");
        assertThat(page("methods.html").select("a[hreflang]")).isEmpty();
    }

    @Test
    void ways_lead_to_the_pages_of_the_language_and_from_there_to_those_that_it_lacks() {
        assertThat(page("fr/index.html").select("header a").eachAttr("href"))
                .contains("glossary.html", "search.html", "../materials/index.html");
        Page steps = DemoSite.made().cases().stream().flatMap(one -> one.translated().stream()).flatMap(there -> there.pages().stream())
                .filter(each -> each.path().equals("fr/cases/tide-table/steps.html")).findFirst().orElseThrow();
        assertThat(Jsoup.parse(html(steps)).select("a[href*=glossary.html#]").eachAttr("href")).isNotEmpty()
                .allMatch(href -> href.startsWith("../../glossary.html#"));
    }

    @Test
    void the_search_loads_the_index_of_its_language_from_where_it_lies() {
        assertThat(page("fr/search.html").select("script[src*=search-index]").eachAttr("src"))
                .containsExactly("../assets/search-index-fr.js");
        assertThat(page("fr/search.html").selectFirst("[data-search]").attr("data-up")).isEqualTo("../");
        CaseCard told = CARDS.stream().filter(card -> card.id().equals("tide-table")).findFirst().orElseThrow()
                .foundBy("fr", List.of(new SearchEntry("fr/cases/tide-table/index.html", "case-study", "Une table", "Étude de cas", "",
                        WordList.packed(List.of("mare")), "")));
        DataFile index = SearchIndex.files(DemoSite.made().library(), "fr", List.of(told), List.of()).get(0);
        assertThat(index.path()).isEqualTo("assets/search-index-fr.js");
        assertThat(index.text()).contains("fr/cases/tide-table/index.html", "fr/glossary.html#term-tideline", "cerne")
                .doesNotContain("\"tideline\"");
    }

    @Test
    void the_glossary_is_sorted_by_the_terms_of_its_language_and_holds_each_once() {
        List<String> terms = page("fr/glossary.html").select("main dfn").eachText();
        assertThat(page("fr/glossary.html").select("[id^=term-]").eachAttr("id"))
                .containsExactlyInAnyOrderElementsOf(page("glossary.html").select("[id^=term-]").eachAttr("id"));
        assertThat(terms).isEqualTo(terms.stream().sorted(Comparator.comparing(Stems::plain)).toList()).contains("cerne");
    }
}
