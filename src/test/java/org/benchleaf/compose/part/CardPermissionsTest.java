package org.benchleaf.compose.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.PageComposer;
import org.benchleaf.compose.cases.CasePages;
import org.benchleaf.compose.part.Clearance.Output;
import org.benchleaf.compose.site.SearchIndex;
import org.benchleaf.derive.WorkedCase;
import org.benchleaf.model.Library;
import org.benchleaf.model.Picture;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the library tells of a case whose public text is not permitted. */
class CardPermissionsTest {

    private static final Clearance SHEETS = clearance(true, Set.of(Output.STEP_SHEET, Output.PREPARATION_SHEET,
            Output.RESULTS, Output.FIGURES, Output.PICTURES));
    private static Library library;
    private static WorkedCase worked;

    @BeforeAll
    static void work() {
        library = DemoSite.made().library();
        worked = DemoSite.worked("tide-table", library);
    }

    @Test
    void the_card_leads_to_the_sheets_and_tells_nothing_of_the_story() {
        CaseCard card = PageComposer.compose(worked, library, SHEETS).card();

        assertThat(card.title()).isEqualTo(worked.source().title());
        assertThat(card.summary()).isEmpty();
        assertThat(card.picture()).isEmpty();
        assertThat(card.pages()).doesNotContain("cases/tide-table/index.html");
    }

    @Test
    void the_search_leads_to_a_page_that_exists() {
        CasePages pages = PageComposer.compose(worked, library, SHEETS);
        List<SearchEntry> found = pages.pages().stream().map(page -> PageSearch.of(page, PageTree.of("<main><p>Wash it.</p></main>"))
                .entry(pages.searchTitle(page))).toList();
        String index = SearchIndex.files(library, List.of(pages.card().foundBy(found)), List.of()).get(0).text();

        assertThat(index).contains("cases/tide-table/steps.html").doesNotContain("cases/tide-table/index.html");
    }

    @Test
    void the_sentences_of_a_page_stand_and_leave_with_it() {
        assertThat(SHEETS.allowsFile("steps-sentences.js")).isTrue();
        assertThat(SHEETS.allowsFile("index-sentences.js")).isFalse();
    }

    @Test
    void only_pictures_of_a_step_are_shown_beside_the_sheets() {
        assertThat(SHEETS.pictures(worked.source())).extracting(Picture::id).containsExactly("in-bath", "bridges");
        assertThat(Clearance.on(DemoSite.DAY, worked.source().publication(), Audience.EVERYBODY).pictures(worked.source()))
                .isEqualTo(worked.source().pictures());
        assertThat(clearance(true, Set.of(Output.STEP_SHEET)).pictures(worked.source()))
                .isEmpty();
    }

    @Test
    void how_much_stock_went_into_a_bath_is_told_only_where_strengths_are() {
        assertThat(baths(false)).doesNotContain("stock");
        assertThat(baths(true)).contains("stock added");
    }

    private static String baths(boolean strengths) {
        return PageComposer.compose(worked, library, clearance(strengths, Set.of(Output.RESULTS, Output.DATA))).files()
                .stream().filter(file -> file.path().endsWith("baths-wash.csv")).findFirst().orElseThrow().text();
    }

    private static Clearance clearance(boolean strengths, Set<Output> outputs) {
        return new Clearance(DemoSite.DAY, Audience.EVERYBODY, outputs, outputs, strengths, List.of());
    }
}
