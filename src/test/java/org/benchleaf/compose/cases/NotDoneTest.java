package org.benchleaf.compose.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.benchleaf.DemoSite;
import org.benchleaf.page.Block;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Page;
import org.benchleaf.page.Prose;
import org.benchleaf.page.Section;
import org.junit.jupiter.api.Test;

/** What was considered and not done stands once: in the story's own section for it, if it has one. */
class NotDoneTest {

    @Test
    void the_story_tells_it_and_the_options_of_the_proposal_stand_below() {
        List<Section> told = DemoSite.made().cases().stream().flatMap(pages -> pages.pages().stream())
                .filter(page -> page.kind().equals("case-study") && page.caseId().orElseThrow().equals("tide-table"))
                .map(Page::blocks).flatMap(List::stream).filter(Section.class::isInstance).map(Section.class::cast)
                .filter(section -> section.id().contains("not-done")).toList();

        assertThat(told).singleElement().satisfies(section -> {
            assertThat(section.heading()).isEqualTo("What we did not do");
            assertThat(section.blocks()).extracting(Block::getClass).extracting(Object::toString)
                    .containsExactly(Prose.class.toString(), Facts.class.toString());
            assertThat(((Facts) section.blocks().get(1)).facts()).anyMatch(fact -> fact.name().equals("Considered: wash on blotters only"));
        });
    }
}
