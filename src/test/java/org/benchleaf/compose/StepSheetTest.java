package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.benchleaf.DemoSite;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.derive.Deriver;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Library;
import org.benchleaf.read.CaseReader;
import org.junit.jupiter.api.Test;

/** What trainees read on the step sheet besides the steps. */
class StepSheetTest {

    private static final Path CONTENT = Path.of("content");

    @Test
    void a_reason_that_belongs_to_no_step_is_told_with_its_rule() {
        List<Fact> told = reasons(new Finding("iron-gall-not-cleared-by-solubility", Optional.empty(), "not recorded",
                Optional.of("Two colleagues graded it."), true));

        assertThat(told).hasSize(1);
        assertThat(told.get(0).name()).startsWith("A clean solubility test alone never clears iron-gall ink");
        assertThat(told.get(0).value().markup()).contains("Two colleagues graded it.");
    }

    @Test
    void a_reason_that_only_colleagues_need_is_not() {
        assertThat(reasons(new Finding("people-on-record", Optional.empty(), "not named",
                Optional.of("Nobody remembers."), false))).isEmpty();
    }

    private static List<Fact> reasons(Finding finding) {
        Library library = DemoSite.made().library();
        var checked = CaseChecker.check(CaseReader.read(CONTENT, CONTENT.resolve("cases/lock-plan")), library,
                DemoSite.DAY);
        var worked = Deriver.derive(checked.treatment().orElseThrow(), List.of(finding), library).worked();
        return PageComposer.compose(worked, library, Clearance.on(DemoSite.DAY, worked.source())).pages().stream()
                .filter(page -> page.kind().equals("step-sheet")).flatMap(page -> page.blocks().stream())
                .filter(Section.class::isInstance).map(Section.class::cast)
                .filter(section -> section.id().equals("reasons")).flatMap(section -> section.blocks().stream())
                .flatMap(block -> ((Facts) block).facts().stream()).toList();
    }
}
