package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/**
 * Opens one page of each kind in Firefox, where that is or may be installed: what Chromium forgives may fail elsewhere. Where
 * it cannot be had this says so and looks at nothing, since Chromium has seen all of it.
 */
class FirefoxIT {

    private static final SiteUnderTest SITE = SiteUnderTest.demo();
    private static final List<Integer> WIDTHS = List.of(320, 1280);
    private static final List<String> RULES = List.of("no-sideways-scroll", "no-text-cut-off", "control-size",
            "border-contrast", "links-by-more-than-colour", "no-text-over-pictures");

    @Test
    void one_page_of_each_kind_is_sound_in_a_second_browser() {
        with(firefox -> {
            firefox.beforeEachPage(Scripts.axe());
            List<Fault> faults = new ArrayList<>();
            SITE.onePageOfEachKind().values().forEach(page -> WIDTHS.forEach(width -> {
                firefox.open(page.path(), width);
                String place = page.path() + " (Firefox, " + width + " px)";
                firefox.console().forEach(said -> faults.add(new Fault("quiet console", place, said)));
                List<List<String>> found = firefox.lists(Scripts.together(RULES.stream().map(Scripts::plain).toList()));
                for (int at = 0; at < RULES.size(); at++) {
                    String rule = RULES.get(at);
                    found.get(at).forEach(what -> faults.add(new Fault(rule, place, what)));
                }
                firefox.texts(Scripts.named("axe-run"), true, "all")
                        .forEach(what -> faults.add(new Fault("accessibility library", place, what)));
            }));
            Fault.none(faults.stream());
        });
    }

    @Test
    void planted_faults_are_seen_in_it() {
        with(firefox -> {
            firefox.beforeEachPage(Scripts.axe());
            firefox.open("index.html", 320);
            assertThat(firefox.texts("document.querySelector('main').style.minInlineSize = '60rem';"
                    + "document.querySelector('main img').removeAttribute('alt'); console.error('heard'); return [];", false)).isEmpty();
            assertThat(firefox.texts(Scripts.named("no-sideways-scroll"), false)).isNotEmpty();
            assertThat(firefox.texts(Scripts.named("axe-run"), true, "all")).anyMatch(found -> found.startsWith("image-alt"));
            assertThat(firefox.console()).contains("heard");
        });
    }

    @Test
    void the_search_finds_and_a_timer_runs() {
        with(firefox -> {
            firefox.open("search.html?q=tidelin", 320);
            assertThat(firefox.texts("return [...document.querySelectorAll('[data-search-results] a')].map(a => a.href);", false))
                    .anyMatch(link -> link.contains("glossary.html#"));
            firefox.open("cases/tide-table/steps.html", 320);
            assertThat(firefox.texts("document.getElementById('tick-briefing').checked = true;"
                    + "const timer = document.querySelector('[data-timer]');"
                    + "timer.querySelector('button').click(); return [timer.querySelector('button').textContent];", false))
                    .containsExactly("Pause");
        });
    }

    private static void with(Consumer<Firefox> look) {
        Firefox.on(SITE.root()).ifPresentOrElse(firefox -> {
            try (firefox) {
                look.accept(firefox);
            }
        }, () -> System.out.println("Firefox is not on this machine and cannot be installed: nothing was looked at in it."));
    }
}
