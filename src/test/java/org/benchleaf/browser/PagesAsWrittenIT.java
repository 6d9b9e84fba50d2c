package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.benchleaf.publish.HtmlChecker;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Reads every page of the published demo as a file and asks every rule of it that needs no browser. */
class PagesAsWrittenIT {

    private final SiteUnderTest site = SiteUnderTest.demo();

    @TestFactory
    Stream<DynamicTest> every_page_keeps() {
        return RuleBook.ofPages(site).stream().map(rule -> DynamicTest.dynamicTest(rule.name() + " (" + rule.clause() + ")",
                () -> Fault.none(site.pages().stream().flatMap(page -> rule.faults(page).stream()))));
    }

    @TestFactory
    Stream<DynamicTest> the_site_keeps() {
        return RuleBook.ofTheSite().stream().map(rule -> DynamicTest.dynamicTest(rule.name() + " (" + rule.clause() + ")",
                () -> Fault.none(rule.faults().apply(site))));
    }

    @Test
    void the_html_checker_finds_nothing() throws Exception {
        List<String> findings = new java.util.ArrayList<>();
        for (WrittenPage page : site.pages()) {
            findings.addAll(HtmlChecker.findings(page.path(), site.bytes(page.path())));
        }
        assertThat(findings).isEmpty();
    }

    @Test
    void no_page_is_too_heavy() {
        List<PageWeight> weights = site.pages().stream().map(page -> PageWeight.of(site, page)).toList();
        Map<String, PageWeight> heaviest = new TreeMap<>();
        Comparator<PageWeight> byAll = Comparator.comparingLong(weight -> weight.withoutPictures() + weight.phonePictures());
        weights.forEach(weight -> heaviest.merge(weight.page().kind(), weight,
                (one, other) -> byAll.compare(one, other) >= 0 ? one : other));
        System.out.println("Heaviest page of each kind (text packed; a phone of 412 px):");
        heaviest.values().forEach(weight -> System.out.println("  " + weight.line()));
        Fault.none(weights.stream().flatMap(weight -> weight.faults().stream()));
    }

    @Test
    void what_pages_keep_on_the_device_is_kept_under_our_own_name() {
        assertThat(site.pages().stream().flatMap(page -> AssetRules.keysKept(site, page)).distinct())
                .allSatisfy(key -> assertThat(key).doesNotMatch("[\"'](?!benchleaf).*"));
    }
}
