package org.benchleaf.compose.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.AllBlocks;
import org.benchleaf.page.Facts;
import org.junit.jupiter.api.Test;

/**
 * Whether mends come off. The stamp of the tide table bled in water within a minute, by its spot test; Brückle 1997 has a moderate
 * amount of moisture for methyl cellulose, with which the poster was mended, whose red bled in water.
 */
class TakingOffTest {

    private static List<String> told(String id) {
        return DemoSite.made().cases().stream().flatMap(pages -> pages.pages().stream())
                .filter(page -> page.kind().equals("case-study") && page.caseId().orElseThrow().equals(id))
                .flatMap(AllBlocks::of).filter(Facts.class::isInstance).map(Facts.class::cast).flatMap(facts -> facts.facts().stream())
                .filter(fact -> fact.name().equals("Can the mends come off again?")).map(fact -> fact.value().plain()).toList();
    }

    @Test
    void it_is_told_with_what_and_which_colour_test_stands_against_it() {
        assertThat(told("tide-table")).singleElement().asString().startsWith("Wheat starch paste, to take it off: Moisture, given slowly.")
                .contains("Water: an ink or a colour of this sheet moved in it when it was tested")
                .endsWith("Whether it was tried on this sheet is not told.");
        assertThat(told("flood-poster")).singleElement().asString()
                .contains("A moderate amount of moisture. [", "Water: an ink or a colour of this sheet moved in it");
    }

    /** No ink of the plan moved in water: its case file has its tests "stable". */
    @Test
    void where_no_colour_moved_none_is_named() {
        assertThat(told("lock-plan")).isNotEmpty().noneMatch(line -> line.contains("moved in it"));
    }

    /**
     * The case file of the map has its print and its tint "stable" for 40 min in the reactivating ethanol, and the tint bled in water; of
     * the tide table only what was tested under a fixative stayed in the bath.
     */
    @Test
    void a_liquid_in_which_every_colour_stayed_is_named_and_one_that_needed_a_fixative_is_not() {
        assertThat(told("parish-map")).isNotEmpty().allSatisfy(line -> assertThat(line)
                .contains("Water: an ink or a colour of this sheet moved in it")
                .contains("Ethanol for reactivating the coated tissue: every ink and colour of this sheet stayed in it"));
        assertThat(told("tide-table")).noneMatch(line -> line.contains("stayed in it"));
    }
}
