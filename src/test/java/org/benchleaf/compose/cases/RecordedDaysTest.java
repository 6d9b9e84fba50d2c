package org.benchleaf.compose.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.page.Page;
import org.benchleaf.page.Section;
import org.junit.jupiter.api.Test;

/**
 * What was done is told beside what was planned. By the case file of the tide table, worked by hand: the tray is 550 mm × 420 mm and
 * filled 25 mm deep, 5.775 L a bath; 3 baths were planned, 17.325 L, and the last one read is the fourth, 23.1 L. From mending on
 * 23 March to measuring on 18 May are 8 + 30 + 17 = 55 days between, of 64 from 16 March to 18 May (16 + 30 + 18).
 */
class RecordedDaysTest {

    private static final Map<String, Page> STUDIES = DemoSite.made().cases().stream().flatMap(pages -> pages.pages().stream())
            .filter(page -> page.kind().equals("case-study")).collect(Collectors.toMap(page -> page.caseId().orElseThrow(), page -> page));

    private static String time(String id) {
        return STUDIES.get(id).blocks().stream().filter(Section.class::isInstance).map(Section.class::cast)
                .filter(section -> section.id().equals("time")).findFirst().orElseThrow().toString().replaceAll("[\u00a0\u202f]", " ");
    }

    @Test
    void the_baths_on_record_stand_beside_those_planned_among_the_results_with_the_water_of_each() {
        assertThat(time("tide-table")).contains("Washing: 4 baths on record; planned: 3 baths.");
        assertThat(DemoSite.made().cases().stream().flatMap(pages -> pages.pages().stream())
                .filter(page -> page.path().equals("cases/tide-table/results.html")).findFirst().orElseThrow().blocks().toString()
                .replaceAll("[\u00a0\u202f]", " "))
                .contains("Washing: 4 baths, 23 L of water on record; planned: 3 baths, 17 L of water.");
    }

    @Test
    void a_wait_that_was_most_of_the_time_is_told_with_what_was_to_be_gone_in_it() {
        assertThat(time("tide-table")).contains("It took 64 days in all, from 16 March 2026 to 18 May 2026, nights and days off included. "
                + "Between “Mending” (23 March 2026) and “Measuring” (18 May 2026) lie 55 days on which no step began. What was laid on "
                + "in “Fixing” was expected to be gone by 15 May 2026. The hours that were really worked are not on record");
    }

    @Test
    void a_card_tells_the_day_of_its_newest_edition() {
        List<CaseCard.LastChange> changes = DemoSite.made().cases().stream().map(CasePages::card).map(CaseCard::lastChange).toList();
        assertThat(changes).filteredOn(change -> change.edition() == 2).containsExactlyInAnyOrder(
                new CaseCard.LastChange("2026-05-18", "pH, colour and size read two months later were added", 2),
                new CaseCard.LastChange("2026-06-26", "what was seen after four weeks was added", 2));
        assertThat(changes).filteredOn(change -> change.edition() == 1).hasSize(3);
    }
}
