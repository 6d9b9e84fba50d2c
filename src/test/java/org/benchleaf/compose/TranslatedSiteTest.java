package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.cases.CasePages;
import org.benchleaf.compose.cases.TranslatedPages;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.ForeignWords;
import org.benchleaf.compose.part.PageTree;
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
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The library, the advice for owners, the materials, the glossary and the search stand in each language in which a case is told. */
class TranslatedSiteTest {

    private static final List<CaseCard> CARDS = DemoSite.made().cases().stream().map(CasePages::card).toList();

    private static SiteComposition site(List<CaseCard> cards) {
        return new SiteComposition(DemoSite.made().library(), cards, List.of(), AuthorGuide.EMPTY, Audience.EVERYBODY);
    }

    private static Document page(String path) {
        return page(site(CARDS), path);
    }

    private static Document page(SiteComposition site, String path) {
        String html = html(site.page(path).orElseThrow());
        return Jsoup.parse(site.translationOf(path).map(there -> there.marked(html, original(html(site.page(
                there.originalOf(site.page(path).orElseThrow())).orElseThrow()))).html()).orElse(html));
    }

    private static ForeignWords.Original original(String html) {
        return ForeignWords.Original.of(PageTree.of(html));
    }

    private static String html(Page page) {
        return new String(SitePublisher.with(Path.of("templates"), Pictures.none()).publish(page).bytes(), StandardCharsets.UTF_8);
    }

    @Test
    void each_language_of_a_case_has_a_library_advice_for_owners_materials_a_glossary_and_a_search() {
        List<String> materials = paths(site(CARDS).translated().get(0)).filter(path -> path.contains("/materials/")).toList();
        assertThat(materials).contains("ar/materials/index.html", "ar/materials/ethanol-96.html", "ar/materials/compared--solvent.html")
                .hasSize((int) DemoSite.made().site().pages().stream().filter(page -> page.path().startsWith("materials/")).count());
        assertThat(site(CARDS).translated().stream().collect(Collectors.toMap(TranslatedPages::language, Function.identity())))
                .containsOnlyKeys("ar", "cy", "fr").allSatisfy((language, there) -> assertThat(paths(there)
                        .filter(path -> !path.contains("/materials/"))).containsExactly(
                                language + "/index.html", language + "/at-home.html",
                                language + "/glossary.html", language + "/sums.html", language + "/search.html"));
        List<CaseCard> untold = CARDS.stream().filter(card -> card.translated().isEmpty()).toList();
        assertThat(untold).isNotEmpty();
        assertThat(site(untold).translated()).isEmpty();
        assertThat(html(site(untold).page("index.html").orElseThrow())).doesNotContain("hreflang");
    }

    private static Stream<String> paths(TranslatedPages there) {
        return there.pages().stream().map(Page::path);
    }

    @Test
    void a_material_is_told_in_the_studio_s_words_of_its_language_and_marked_where_it_has_none() {
        Document felt = page("fr/materials/felt.html");
        assertThat(felt.selectFirst("h1").text()).isEqualTo("Feutre de laine");
        assertThat(felt.selectFirst("h1").hasAttr("lang")).isFalse();
        assertThat(felt.select("a[hreflang]").eachAttr("href")).containsExactlyInAnyOrder("../../materials/felt.html",
                "../../ar/materials/felt.html", "../../cy/materials/felt.html");
    }

    @Test
    void a_translated_sheet_leads_to_materials_in_its_language_and_these_to_its_cases() {
        Page steps = DemoSite.made().cases().stream().flatMap(one -> one.translated().stream()).flatMap(there -> there.pages().stream())
                .filter(each -> each.path().equals("cy/cases/tide-table/steps.html")).findFirst().orElseThrow();
        assertThat(Jsoup.parse(html(steps)).select("a[href*=materials/]").eachAttr("href")).isNotEmpty()
                .allMatch(href -> href.startsWith("../../materials/"));
        assertThat(page("cy/materials/wheat-starch.html").select("#cases a[href*=tide-table]").eachAttr("href"))
                .contains("../cases/tide-table/index.html");
        assertThat(page("cy/materials/compared--adhesive.html").select("#compared-used a").eachAttr("href"))
                .contains("wheat-starch.html");
    }

    @Test
    void a_list_of_cases_that_takes_several_pages_takes_as_many_in_each_language() {
        List<CaseCard> many = IntStream.rangeClosed(1, 401).mapToObj(number -> CARDS.stream()
                .filter(card -> card.id().equals("tide-table")).findFirst().orElseThrow()).toList();
        assertThat(paths(site(many).translated().get(2))).contains("fr/materials/wheat-starch--2.html");
        assertThat(Jsoup.parse(html(site(many).page("fr/materials/wheat-starch.html").orElseThrow())).select("#cases a")
                .eachAttr("href")).contains("wheat-starch--2.html");
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

    /** Unicode Standard, code chart Arabic: U+060C, U+061B and U+061F are its comma, semicolon and question mark. */
    @ParameterizedTest
    @ValueSource(strings = {"ar/sums.html", "ar/glossary.html", "ar/materials/compared--tissue.html"})
    void behind_an_arabic_word_stand_the_signs_of_arabic(String path) {
        assertThat(page(path).select("main :not([lang=en])").stream().map(Element::ownText).filter(text -> text.indexOf('\u200e') < 0)
                .toList()).isNotEmpty().noneMatch(Pattern.compile("\\p{IsArabic}[)» ]?[,;?](?:\\s|$)").asPredicate());
    }

    @ParameterizedTest
    @ValueSource(strings = {"fr/sums.html", "cy/sums.html", "ar/sums.html"})
    void no_formula_is_told_in_english(String path) {
        assertThat(page(path).select(".sum__formula").eachText()).isNotEmpty()
                .noneMatch(Pattern.compile("\\b(?:the|for|as|with|solved|else|where|before|after)\\b").asPredicate());
    }

    /** WCAG 2.2, 3.1.2 Language of Parts, wherever a list names a case that the language does not tell. */
    @ParameterizedTest
    @ValueSource(strings = {"fr", "cy", "ar"})
    void the_title_of_a_case_that_the_language_does_not_tell_says_that_it_is_english(String language) {
        Set<String> untold = CARDS.stream().filter(card -> card.translated().stream()
                .noneMatch(there -> there.language().equals(language))).map(CaseCard::title)
                .collect(Collectors.toSet());
        SiteComposition site = site(CARDS);
        List<Element> titles = site.translated().stream().filter(there -> there.language().equals(language))
                .flatMap(TranslatedSiteTest::paths).flatMap(path -> page(site, path).select("main a").stream())
                .filter(link -> untold.contains(link.text())).toList();
        assertThat(titles).isNotEmpty().allMatch(title -> title.closest("[lang]").attr("lang").equals("en"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"sums.html", "fr/sums.html", "cy/sums.html", "ar/sums.html"})
    void no_sentence_ends_with_two_stops(String path) {
        assertThat(page(path).select(".sum__about").eachText()).isNotEmpty().noneMatch(text -> text.contains(".."));
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
                .contains("glossary.html", "search.html", "materials/index.html", "../browse/index.html");
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
