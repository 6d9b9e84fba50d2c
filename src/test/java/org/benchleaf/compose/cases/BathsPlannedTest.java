package org.benchleaf.compose.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.AllBlocks;
import org.benchleaf.page.Facts;
import org.junit.jupiter.api.Test;

/**
 * What a colleague asks of a bath and of a case. By hand, from the case file of the tide table: a tray of 420 mm by 550 mm, filled 25 mm
 * deep, holds 5.775 L, of 0.998 kg/L; the sheet was weighed at 9.6 g, which is 600 g of water for each gram of paper.
 */
class BathsPlannedTest {

    private static List<String> facts(String kind) {
        return DemoSite.made().cases().stream().flatMap(pages -> pages.pages().stream())
                .filter(page -> page.kind().equals(kind) && page.caseId().orElseThrow().equals("tide-table"))
                .flatMap(AllBlocks::of).filter(Facts.class::isInstance).map(Facts.class::cast).flatMap(facts -> facts.facts().stream())
                .map(fact -> fact.name() + ": " + fact.value().plain()).toList();
    }

    @Test
    void the_water_of_a_bath_and_its_ratio_to_the_paper_stand_beside_what_was_read() {
        assertThat(facts("results")).anyMatch(fact -> fact.matches("Water in one bath: .*5\\.8.L"))
                .anyMatch(fact -> fact.matches("Liquid for each gram of paper \\(liquor ratio\\): .*600.g/g"));
    }

    @Test
    void the_licence_stands_beside_the_reference() {
        assertThat(facts("case-study")).contains("Licence: CC-BY-4.0");
    }
}
