package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** The search, asked from a file: what a reader types, slips of the pen included, leads to the page that holds it. */
@Execution(ExecutionMode.CONCURRENT)
class SearchIT {

    private static final int FIRST_SCREEN = 5;

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

    @Test
    void every_result_leads_to_a_place_that_is_there() {
        SiteUnderTest site = SiteUnderTest.demo();
        Windows.lend(window -> {
            window.open("search.html", "?q=paper");
            List<String> links = links(window);
            assertThat(links).isNotEmpty().allSatisfy(link -> assertThat(site.root().resolve(link.replaceFirst("#.*", "")))
                    .exists());
        });
    }

    @Test
    void what_is_not_found_is_said_and_other_ways_are_offered() {
        Windows.lend(window -> {
            window.open("search.html", "?q=xylophone");
            assertThat(links(window)).isEmpty();
            assertThat(status(window)).startsWith("No result for “xylophone”.");
            assertThat(window.texts("return [...document.querySelectorAll('.search-form__instead a')].filter(link => "
                    + "link.checkVisibility());")).isNotEmpty();
        });
    }

    /** In a replacement of ECMAScript {@code $&} stands for what was found (ECMA-262, GetSubstitution). */
    @Test
    void signs_of_patterns_and_addresses_are_looked_for_as_they_are_typed() {
        Windows.lend(window -> {
            for (String typed : List.of("$& $1 $`", "100% #2", "(.*)+[q]", "a\\b?c=d&e", "%zz")) {
                window.open("search.html");
                window.run("const input = document.querySelector('[data-search] input'); input.value = arguments[0];"
                        + "input.form.requestSubmit();", typed);
                assertThat(status(window)).contains("“" + typed + "”");
            }
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

    private static List<String> found(String question) {
        List<String> links = new ArrayList<>();
        Windows.lend(window -> {
            window.open("search.html", "?q=" + question.replace(" ", "%20"));
            links.addAll(links(window).stream().limit(FIRST_SCREEN).toList());
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
