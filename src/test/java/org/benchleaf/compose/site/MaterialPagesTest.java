package org.benchleaf.compose.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.assertj.core.groups.Tuple;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.PageComposer;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.page.CaseLines;
import org.benchleaf.page.Section;
import org.junit.jupiter.api.Test;

/** The page of a material tells how strong it was used; the strengths stand in the case files of the demo. */
class MaterialPagesTest {

    private static List<Tuple> made(String material) {
        return DemoSite.made().site().pages().stream().filter(page -> page.path().equals("materials/" + material + ".html"))
                .flatMap(page -> page.blocks().stream()).filter(Section.class::isInstance).map(Section.class::cast)
                .filter(section -> section.id().equals("made")).flatMap(section -> section.blocks().stream())
                .map(CaseLines.class::cast).flatMap(lines -> lines.entries().stream())
                .map(entry -> Tuple.tuple(entry.title().href(), entry.about())).toList();
    }

    @Test
    void a_material_tells_the_strength_in_each_case_that_makes_something_of_it() {
        assertThat(made("methyl-cellulose")).extracting(tuple -> tuple.toList().get(0)).containsExactlyInAnyOrder(
                "../cases/lock-plan/index.html", "../cases/flood-poster/index.html");
        assertThat(made("methyl-cellulose")).extracting(tuple -> tuple.toList().get(1).toString().replaceAll("[\u00a0\u202f]", " "))
                .anyMatch(told -> told.contains("2.5 % m/v")).anyMatch(told -> told.contains("3 % m/v"));
        assertThat(made("wheat-starch")).singleElement().asString().contains("1 part of ").contains(" to 5 parts of ");
    }

    @Test
    void what_is_made_of_nothing_has_no_such_part() {
        assertThat(made("kozo-5")).isEmpty();
    }

    @Test
    void strengths_that_are_not_for_the_public_stand_on_no_card() {
        var worked = DemoSite.worked("lock-plan", DemoSite.made().library());
        CaseCard card = PageComposer.compose(worked, DemoSite.made().library(), new Clearance(DemoSite.DAY, Audience.EVERYBODY,
                Set.of(Clearance.Output.PREPARATION_SHEET), Set.of(), false, List.of())).card();

        assertThat(card.made()).isEmpty();
    }
}
