package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The search, asked from a file: what a reader types, slips of the pen included, leads to the page that holds it. */
@Execution(ExecutionMode.CONCURRENT)
class SearchIT {

    private static final int FIRST_SCREEN = 5;
    private static final int FIRST = 3;
    /** The index that a search loads at once. */
    private static final String SENTENCES =
            "return [...document.querySelectorAll('[data-search-results] li')].map(item => item.textContent);";
    private static final long MOST_BYTES = 60_000;
    private static final String UNTIL_ANSWERED = "const done = arguments[arguments.length - 1]; const asked = arguments[0]; "
            + "const look = () => document.querySelector('[data-search]').dataset.answered === asked ? done([]) : setTimeout(look, 20); "
            + "look();";

    /** The pages were named by reading the content, before the search was asked. */
    @ParameterizedTest
    @CsvFileSource(resources = "/search/questions.csv", numLinesToSkip = 1)
    void a_question_finds_the_page_that_answers_it_among_the_first_three(String question, String pages) {
        assertFound("", question, pages);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/search/questions-told.csv", numLinesToSkip = 1)
    void a_question_in_another_language_finds_the_page_in_that_language(String language, String question, String pages) {
        assertFound(language + "/", question, pages);
    }

    private static void assertFound(String folder, String question, String pages) {
        List<Pattern> expected = Stream.of(pages.split("\\|"))
                .map(page -> Pattern.compile(Stream.of(page.split("\\*", -1)).map(Pattern::quote).collect(Collectors.joining("[^/]*"))))
                .toList();
        assertThat(found(folder, question).stream().limit(FIRST).toList()).as(question).anyMatch(link ->
                expected.stream().anyMatch(page -> page.matcher(link).matches() || page.matcher(pageOf(link)).matches()));
    }

    private static String pageOf(String link) {
        return link.replaceFirst("#.*", "");
    }

    @ParameterizedTest
    @ValueSource(strings = {"fr", "cy", "ar"})
    void what_a_search_in_another_language_finds_is_there_and_in_that_language(String language) {
        SiteUnderTest site = SiteUnderTest.demo();
        for (String question : List.of("pH", "papier", "papur", "الورق")) {
            assertThat(found(language + "/", question)).allSatisfy(link -> {
                assertThat(link).startsWith(language + "/");
                assertThat(site.root().resolve(pageOf(link))).exists();
            });
        }
        assertThat(found(language + "/", "pH")).isNotEmpty();
    }

    @Test
    void the_sentence_found_and_the_kind_of_page_stand_with_each_result() {
        Windows.lend(window -> {
            ask(window, "bleach");
            assertThat(window.texts(SENTENCES))
                    .anyMatch(item -> item.contains("Case study") && item.contains("We did not bleach the tideline."));
        });
    }

    /** "was seen" is not "wash", and "mol/kg" is not "mould". */
    @Test
    void the_sentence_shown_holds_the_words_asked_for_and_not_a_beginning_of_them() {
        Windows.lend(window -> {
            ask(window, "wash my letter");
            assertThat(window.texts(SENTENCES).get(0)).contains("Washing cannot be undone");
            ask(window, "mould dangerous");
            assertThat(window.texts(SENTENCES)).isNotEmpty().noneMatch(item -> item.contains("mol/kg"));
        });
    }

    @Test
    void the_index_of_the_demo_is_small() throws IOException {
        assertThat(Files.size(SiteUnderTest.demo().root().resolve("assets/search-index.js"))).isBetween(1000L, MOST_BYTES);
    }

    @Test
    void words_of_titles_materials_and_the_glossary_are_found() {
        assertThat(found("tide table")).anyMatch(link -> link.startsWith("cases/tide-table/"));
        assertThat(found("ethanol")).anyMatch(link -> link.startsWith("materials/"));
        assertThat(found("tideline")).anyMatch(link -> link.startsWith("glossary.html#"));
    }

    @Test
    void slips_of_the_pen_are_forgiven() {
        assertThat(found("ethnol")).anyMatch(link -> link.startsWith("materials/"));
        assertThat(found("tidelin")).anyMatch(link -> link.startsWith("glossary.html#"));
        assertThat(found("letterpres")).anyMatch(link -> link.startsWith("cases/tide-table/"));
    }

    /** The parts were named by reading the pages: each is the one whose text holds the words asked for. */
    @ParameterizedTest
    @CsvSource({"bleach the tideline, cases/tide-table/index.html#story-not-done",
            "attic or cellar, at-home.html#home-1", "colour against fresh water, cases/tide-table/results.html#baths-wash"})
    void a_result_opens_at_the_part_of_the_page_in_which_its_sentence_stands(String question, String place) {
        Windows.lend(window -> {
            ask(window, question);
            assertThat(links(window)).contains(place);
            window.open(pageOf(place), place.substring(place.indexOf('#')));
            assertThat(window.run("const part = document.getElementById(location.hash.slice(1)).getBoundingClientRect();"
                    + "return part.top < innerHeight && part.bottom > 0;")).isEqualTo(true);
        });
    }

    @Test
    void a_page_asked_for_by_its_title_opens_at_its_beginning() {
        assertThat(found("tide table that had met the tide")).contains("cases/tide-table/index.html");
    }

    @Test
    void every_result_leads_to_a_place_that_is_there() {
        SiteUnderTest site = SiteUnderTest.demo();
        Windows.lend(window -> {
            for (String question : List.of("paper", "blotter changed", "pH measured")) {
                ask(window, question);
                assertThat(links(window)).isNotEmpty().anyMatch(link -> link.contains("#")).allSatisfy(link -> {
                    Path page = site.root().resolve(pageOf(link));
                    assertThat(page).exists();
                    assertThat(Jsoup.parse(Files.readString(page)).select("[id]").eachAttr("id"))
                            .contains(link.contains("#") ? link.substring(link.indexOf('#') + 1) : "content");
                });
            }
        });
    }

    @Test
    void what_is_not_found_is_said_and_other_ways_are_offered() {
        Windows.lend(window -> {
            ask(window, "bagpipe");
            assertThat(links(window)).isEmpty();
            assertThat(status(window)).startsWith("No result for “bagpipe”.");
            assertThat(window.texts("return [...document.querySelectorAll('.search-form__instead a')].filter(link => "
                    + "link.checkVisibility());")).isNotEmpty();
        });
    }

    /** In a replacement of ECMAScript {@code $&} stands for what was found (ECMA-262, GetSubstitution). */
    @Test
    void signs_of_patterns_and_addresses_are_looked_for_as_they_are_typed() {
        Windows.lend(window -> {
            for (String typed : List.of("$& $1 $`", "100% #2", "(.*)+[q]", "a\\b?c=d&e", "%zz")) {
                ask(window, typed);
                assertThat(status(window)).contains("“" + typed + "”");
            }
        });
    }

    /** The stems are those that the index of a page in that language holds. */
    @ParameterizedTest
    @CsvSource({"œuvres, oeuvr", "OEUVRE, oeuvr", "l’eau, eau", "الجـدول, جدول", "جداول والجدول, جدول", "أوراق, اوراق", "بالورقة, ورقه",
        "dŵr, dwr", "séchée, sech"})
    void a_word_is_found_in_each_of_its_spellings(String typed, String stem) {
        Windows.lend(window -> {
            window.open("search.html");
            window.run("window.BENCHLEAF_INDEX.push({h: 'glossary.html#' + arguments[0], t: '-', k: 0, r: 10, a: arguments[0]});"
                    + "const input = document.querySelector('[data-search] input'); input.value = arguments[1]; "
                    + "input.form.requestSubmit();",
                    stem, typed);
            untilAnswered(window, typed);
            assertThat(links(window)).contains("glossary.html#" + stem);
        });
    }

    @Test
    void the_number_of_results_is_told_once_typing_stops() {
        Windows.lend(window -> {
            window.open("search.html");
            Fault.none(LiveRules.SEARCH_SPEAKS_ONCE.faults(window).stream());
            assertThat(status(window)).matches("\\d+ results for “paper”");
        });
    }

    /** Asks and waits until the results stand there, for sentences are loaded with them. */
    private static void ask(Window window, String question) {
        ask(window, "", question);
    }

    /** One question after the other is asked of the same page, as a reader does, if nothing else was done to it. */
    private static void ask(Window window, String folder, String question) {
        String page = folder + "search.html";
        if (!window.shows(page) || !Boolean.TRUE.equals(window.run("return !!window.__onlyAsked;"))) {
            window.open(page);
            window.run("window.__onlyAsked = true;");
        }
        window.textsLater("const input = document.querySelector('[data-search] input'); input.value = arguments[0];"
                + "input.form.requestSubmit();" + UNTIL_ANSWERED, question);
    }

    private static void untilAnswered(Window window, String question) {
        window.textsLater(UNTIL_ANSWERED, question);
    }

    private static List<String> found(String question) {
        return found("", question);
    }

    /** The paths of the first results from the root of the site. */
    private static List<String> found(String folder, String question) {
        List<String> links = new ArrayList<>();
        Windows.lend(window -> {
            ask(window, folder, question);
            links.addAll(links(window).stream().limit(FIRST_SCREEN).map(link -> folder.isEmpty() ? link : link.replaceFirst("^\\.\\./", ""))
                    .toList());
        });
        return links;
    }

    private static List<String> links(Window window) {
        return window.texts("return [...document.querySelectorAll('[data-search-results] a')].map(link => link.getAttribute('href'));");
    }

    private static String status(Window window) {
        return (String) window.run("return document.querySelector('[data-search-status]').textContent;");
    }
}
