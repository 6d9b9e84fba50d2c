package org.benchleaf.compose.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.DemoSite;
import org.benchleaf.page.Block;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Findings;
import org.benchleaf.page.Section;
import org.benchleaf.text.RichText;
import org.junit.jupiter.api.Test;

/**
 * Sentences for readers outside the trade. The expected numbers are those of the case files of the demo, with their means
 * worked by hand: (4.4 + 4.5 + 4.3 + 4.6 + 4.4) / 5 = 4.44, (7.3 + 7.1 + 7.2 + 7.4 + 7.0) / 5 = 7.2, (18 + 22 + 15 + 19) / 4
 * = 18.5, (1 + 2 + 1 + 1) / 4 = 1.25, (24 + 21 + 17 + 19 + 16) / 5 = 19.4, (2 + 2 + 1 + 2 + 1) / 5 = 1.6, 46 + 61 + 38 + 17
 * = 162. That a whole step of pH is a factor of ten is its definition (IUPAC, Quantities, Units and Symbols in Physical
 * Chemistry, 2.13.1 (v), from memory).
 */
class PlainResultsTest {

    /** What stands under "What was achieved": the answers to the aims, then the other sentences. */
    private static final Map<String, String> SAID = DemoSite.made().cases().stream().flatMap(pages -> pages.pages().stream())
            .filter(page -> page.kind().equals("case-study")).collect(Collectors.toMap(page -> page.caseId().orElseThrow(),
                    page -> page.blocks().stream().filter(Section.class::isInstance).map(Section.class::cast)
                            .filter(section -> section.id().equals("gave")).flatMap(section -> section.blocks().stream())
                            .flatMap(PlainResultsTest::told).map(RichText::plain).collect(Collectors.joining("\n"))
                            .replaceAll("[\u00a0\u202f]", " ")));

    /** A sentence for each measure of which numbers are told: its two sides, the spot that changed most, or one side alone. */
    private static final Pattern NUMBERS = Pattern.compile("before the treatment and|changed most at this place|No reading after");

    private static Stream<RichText> told(Block block) {
        return block instanceof Facts facts ? facts.facts().stream().map(Fact::value)
                : block instanceof Findings findings ? findings.says().stream() : Stream.empty();
    }

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
        assertThat(SAID.get("ferry-letter")).doesNotContain("ten times as acid")
                .contains("The surface of the sheet was acid, pH 5.0, before the treatment, the "
                + "average of 2 places. No reading after it is on record.");
    }

    @Test
    void counts_sizes_and_lightness_are_told_as_they_were_written() {
        assertThat(SAID.get("flood-poster")).contains("Raised mould spots: 162 before the treatment and 1 after it, counted at the "
                + "same 4 places.", "Lightness, on a scale from 0 (black) to 100 (white), changed most at this place: head "
                + "margin. It went from 66.8 to 78.5: lighter.");
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
        assertThat(SAID.values()).allSatisfy(said -> assertThat(NUMBERS.matcher(said).results().count()).isBetween(1L, 3L));
    }

    /** What answers which aim is read off the case files; no result of the poster says that it is fit to be handled. */
    @Test
    void an_aim_is_answered_by_the_results_that_the_case_ties_to_it_or_is_told_to_be_not_measured() {
        assertThat(SAID.get("tide-table").lines().toList()).satisfies(said -> {
            assertThat(said.get(0)).contains("pH 7.2, after it", "tideline. It went from 66.3 to 75.9",
                    "Bending: Before: cracked each time. After: no new crack in ten openings.");
            assertThat(said.get(1)).isEqualTo("Tears: Before: three open. After: none open.");
        });
        assertThat(SAID.get("flood-poster").lines().toList().get(2))
                .isEqualTo("Not measured: none of the results tells whether this was reached.");
    }

    /** A count of what was taken off, or the height of a fold, is no answer to whether mould grows or paper tears again. */
    @Test
    void what_a_result_tells_of_an_aim_is_the_word_of_the_author_and_so_is_why_none_was_read() {
        assertThat(SAID.get("flood-poster").lines().toList().get(0)).contains("counted at the same 4 places. Removed is not stopped: "
                + "whether anything grows again showed only when the poster was looked at after four weeks.")
                .endsWith("After: the same spot, no wider, and no new one. It tells of four weeks in a cool, dry store. In damp air mould "
                        + "can grow again.");
        assertThat(SAID.get("ferry-letter").lines().toList()).satisfies(said -> {
            assertThat(said.get(0)).startsWith("Not measured: the verso was brushed");
            assertThat(said.get(1)).contains("whether it stays held shows");
            assertThat(said.get(2)).startsWith("Tear: Before: open along 17 mm").endsWith("wear shows only in use.");
        });
        assertThat(SAID.get("parish-map").lines().toList()).satisfies(said -> {
            assertThat(said.get(0)).startsWith("Not measured: the map lies flat");
            assertThat(said.get(2)).startsWith("Colour on the web: none seen.").doesNotContain("soiled panel");
        });
    }
}
