package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.model.Library;
import org.benchleaf.page.Page;
import org.benchleaf.page.RecipeCard;
import org.benchleaf.quantity.Unit;
import org.junit.jupiter.api.Test;

/** What the preparation sheet tells to measure out. */
class PreparationSheetTest {

    /** Litres in the demo's tray of 25 mm depth, as the case file's bath asks. */
    private static final double BATH = 5.8;

    @Test
    void limewater_for_a_bath_is_told_by_what_was_added() {
        RecipeCard.Measure measure = cards("tide-table").filter(card -> card.anchor().equals("prepare-bath"))
                .flatMap(card -> card.measures().stream()).filter(each -> each.of().plain().contains("limewater"))
                .findFirst().orElseThrow();

        // The readings of the case: 3.1, 2.9, 3.0 and 3.0 mL. Of limewater made at 20 °C it takes 0.0211 / 0.0219 of 5.7 mL made at 25 °C
        // (PHREEQC, as in lime-water.csv): 5.5 mL.
        assertThat(measure.amount()).isEqualTo("begin with 0.4\u202FmL, expect about 3\u202FmL, stop and ask at 5.5\u202FmL");
        assertThat(measure.with()).startsWith("by the meter");
    }

    /** The author of the tide table leaves the workings off the paper; the author of the parish map says nothing of it. */
    @Test
    void workings_are_left_off_the_paper_where_the_author_chooses_so() {
        assertThat(sheets("tide-table").map(page -> page.frame().onScreenOnly())).containsExactly(List.of("workings"));
        assertThat(sheets("parish-map").map(page -> page.frame().onScreenOnly())).containsExactly(List.of());
        assertThat(pages("tide-table", "class-preparation").map(page -> page.frame().onScreenOnly())).isNotEmpty()
                .containsOnly(List.of("workings"));
        assertThat(pages("tide-table", "class-stations").map(page -> page.frame().onScreenOnly())).isNotEmpty().containsOnly(List.of());
    }

    @Test
    void limewater_for_a_bath_has_its_bounds_behind_it() {
        var figures = DemoSite.worked("tide-table", DemoSite.made().library()).figures();
        // Pure water asks 0.117 mg of calcium hydroxide a litre for pH 8.5 (charge balance with pKw 14.00 at 25 °C), which is
        // 0.078 mL of a stock of 1.5 g/L; water in balance with air about six times as much and more in a busy room.
        assertThat(figures.get("bath.dose").value().in(Unit.MILLILITRE) / BATH).isCloseTo(0.078, within(0.008));
        assertThat(figures.get("bath.dose-ceiling").value().in(Unit.MILLILITRE) / BATH).isBetween(6 * 0.078, 20 * 0.078);
    }

    /** The case asks for at least 100 g of paste; three tears of 64, 38 and 22 mm take 0.24 to 0.5 g (0.02 to 0.04 g/cm² on 12.3 cm²). */
    @Test
    void a_preparation_of_which_far_more_is_made_than_used_says_why_and_how_long_the_rest_keeps() {
        assertThat(facts("tide-table", "prepare-paste")).contains("Why so much: 0.24–0.5\u202Fg is used in all; 100\u202Fg is the smallest "
                + "amount that can be made well. The rest keeps for 5\u202Fd. Where it goes stands under “What is left over”.");
        assertThat(facts("tide-table", "prepare-bath")).noneMatch(fact -> fact.startsWith("Why so much"));
    }

    /** The recipes of the case files: 80 % v/v of ethanol; starch and water, 1 + 5 by mass; 5 % m/v of cellulose ether in ethanol. */
    @Test
    void a_preparation_says_how_strong_it_is() {
        assertThat(facts("parish-map", "prepare-reactivating")).first().asString()
                .startsWith("Strength: 80\u202F% v/v ethanol").endsWith("the rest deionised water");
        assertThat(facts("parish-map", "prepare-film")).first().asString().startsWith("Strength: 5\u202F% m/v hydroxypropyl cellulose");
        assertThat(facts("tide-table", "prepare-paste")).first().asString().startsWith("Strength: 1 part ").endsWith(", by mass");
    }

    private static List<String> facts(String caseId, String anchor) {
        return cards(caseId).filter(card -> card.anchor().equals(anchor)).flatMap(card -> card.facts().stream())
                .map(fact -> fact.name() + ": " + fact.value().plain()).toList();
    }

    private static Stream<RecipeCard> cards(String caseId) {
        return sheets(caseId).flatMap(AllBlocks::of).filter(RecipeCard.class::isInstance).map(RecipeCard.class::cast);
    }

    private static Stream<Page> sheets(String caseId) {
        return pages(caseId, "preparation");
    }

    private static Stream<Page> pages(String caseId, String kind) {
        Library library = DemoSite.made().library();
        var worked = DemoSite.worked(caseId, library);
        return PageComposer.compose(worked, library, Clearance.on(DemoSite.DAY, worked.source().publication(), Audience.EVERYBODY))
                .pages().stream()
                .filter(page -> page.kind().equals(kind));
    }
}
