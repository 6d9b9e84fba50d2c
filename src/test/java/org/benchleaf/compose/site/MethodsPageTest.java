package org.benchleaf.compose.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.benchleaf.DemoSite;
import org.benchleaf.page.LinkGroups;
import org.benchleaf.page.Page;
import org.benchleaf.page.Section;
import org.junit.jupiter.api.Test;

/** The contents of the page of methods: every method in them once, under a subject. */
class MethodsPageTest {

    private static final Page METHODS = DemoSite.made().site().pages().stream().filter(page -> page.path().equals("methods.html"))
            .findFirst().orElseThrow();

    @Test
    void the_contents_lead_to_every_method_once_under_a_subject() {
        List<Section> sections = METHODS.blocks().stream().filter(Section.class::isInstance).map(Section.class::cast).toList();
        List<LinkGroups.Group> subjects = sections.get(0).blocks().stream().map(LinkGroups.class::cast)
                .flatMap(groups -> groups.groups().stream()).toList();
        assertThat(subjects).hasSizeGreaterThan(4).extracting(LinkGroups.Group::heading).doesNotContain("").doesNotHaveDuplicates();
        assertThat(subjects.stream().flatMap(group -> group.entries().stream()).map(entry -> entry.link().href().substring(1)).toList())
                .isEqualTo(sections.stream().skip(1).map(Section::id).toList()).hasSizeGreaterThan(50).doesNotHaveDuplicates();
    }
}
