package org.benchleaf.compose.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.AllBlocks;
import org.benchleaf.page.Findings;
import org.junit.jupiter.api.Test;

/**
 * Sentences for readers outside the trade. The expected numbers are those of the case files of the demo, with their means
 * worked by hand: (4.4 + 4.5 + 4.3 + 4.6 + 4.4) / 5 = 4.44, (7.3 + 7.1 + 7.2 + 7.4 + 7.0) / 5 = 7.2, (18 + 22 + 15 + 19) / 4
 * = 18.5, (1 + 2 + 1 + 1) / 4 = 1.25, (24 + 21 + 17 + 19 + 16) / 5 = 19.4, (2 + 2 + 1 + 2 + 1) / 5 = 1.6, 46 + 61 + 38 + 17
 * = 162. That a whole step of pH is a factor of ten is its definition (IUPAC, Quantities, Units and Symbols in Physical
 * Chemistry, 2.13.1 (v), from memory).
 */
class PlainResultsTest {

    private static final Map<String, List<String>> SAID = DemoSite.made().cases().stream().flatMap(pages -> pages.pages().stream())
            .filter(page -> page.kind().equals("case-study")).collect(Collectors.toMap(page -> page.caseId().orElseThrow(),
                    page -> AllBlocks.of(page).filter(Findings.class::isInstance).map(Findings.class::cast)
                            .flatMap(findings -> findings.says().stream())
                            .map(html -> html.plain().replaceAll("[\u00a0\u202f]", " ")).toList()));

    @Test
    void a_reading_is_told_before_and_after_with_its_unit_and_no_finer_than_it_was_read() {
        assertThat(SAID.get("tide-table")).contains("The surface of the sheet was acid, pH 4.4, before the treatment and neither "
                + "acid nor alkaline, pH 7.2, after it, the average of 5 places. One whole step lower on the scale of pH is ten times as "
                + "acid.");
        assertThat(SAID.get("lock-plan"))
                .contains("Height of waves: 19 mm before the treatment and 1 mm after it, the average of 4 places.");
        assertThat(SAID.get("parish-map"))
                .contains("Height of folds: 19 mm before the treatment and 2 mm after it, the average of 5 places.");
    }

    @Test
    void what_was_read_on_one_side_only_is_told_as_such() {
        assertThat(SAID.get("ferry-letter")).containsExactly("The surface of the sheet was acid, pH 5.0, before the treatment, the "
                + "average of 2 places. No reading after it is on record.");
    }

    @Test
    void counts_sizes_and_lightness_are_told_as_they_were_written() {
        assertThat(SAID.get("flood-poster")).contains("Raised mould spots: 162 before the treatment and 1 after it, counted at the "
                + "same 4 places.", "Lightness, on a scale from 0 (black) to 100 (white), changed most here: head margin. It went from "
                + "66.8 to 78.5, so it is lighter.");
        assertThat(SAID.get("tide-table")).contains("The width of the sheet was 298 mm before the treatment and 300 mm after "
                + "it; the height changed less. A steel rule cannot tell less than half a millimetre.");
    }

    /** The case file has 560.0 mm before and after. */
    @Test
    void a_side_that_did_not_change_is_not_told_to_have_changed_less() {
        assertThat(SAID.get("lock-plan")).contains("The height of the sheet was 430 mm before the treatment and 430.5 mm after it; "
                + "no change was read in the width. A steel rule cannot tell less than half a millimetre.");
    }

    @Test
    void a_page_tells_at_most_three() {
        assertThat(SAID.values()).allSatisfy(sentences -> assertThat(sentences).hasSizeBetween(1, 3));
    }
}
