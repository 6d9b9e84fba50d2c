package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.benchleaf.DemoSite;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.derive.Deriver;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Library;
import org.benchleaf.page.BenchStep;
import org.benchleaf.page.BenchStrip;
import org.benchleaf.page.BenchTimer;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Section;
import org.benchleaf.page.Working;
import org.benchleaf.read.CaseReader;
import org.junit.jupiter.api.Test;

/** What trainees read on the step sheet besides the steps. */
class StepSheetTest {

    private static final Path CONTENT = Path.of("content");

    @Test
    void a_reason_that_belongs_to_no_step_is_told_with_its_rule() {
        List<Fact> told = reasons(new Finding("iron-gall-not-cleared-by-solubility", Optional.empty(), "not recorded",
                Optional.of("Two colleagues graded it."), true, Finding.Standing.ANSWERED));

        assertThat(told).hasSize(1);
        assertThat(told.get(0).name()).startsWith("A clean solubility test alone never clears iron-gall ink");
        assertThat(told.get(0).value().plain()).contains("Two colleagues graded it.");
    }

    @Test
    void a_reason_that_only_colleagues_need_is_not() {
        assertThat(reasons(new Finding("people-on-record", Optional.empty(), "not named",
                Optional.of("Nobody remembers."), false, Finding.Standing.ANSWERED))).isEmpty();
    }

    /** The tide table is bathed three times for 20 min, and its blotters are changed after 15 min, 30 min and 1 h more. */
    @Test
    void each_timer_tells_when_in_its_step_it_is_over() {
        List<BenchTimer> timers = timers("tide-table");

        // By hand, with the usual 3 to 6 min to fill and 5 to 8 min for a change and its pH: 3 + 20 and 6 + 20, 3 + 40 + 5 and 6 + 40 + 8,
        // 3 + 60 + 10 and 6 + 60 + 16 min.
        assertThat(timers).filteredOn(timer -> timer.id().matches("timer-(wash-bath|dry-change)-[123]"))
                .extracting(timer -> (timer.length() + ": " + timer.at().orElse("with the step")).replaceAll("\\h", " "))
                .containsExactly("20 min: due 23–26 min into the step", "20 min: due 48–54 min into the step",
                        "20 min: due 73–82 min into the step", "15 min: with the step", "30 min: due 45 min into the step",
                        "1 h: due 1 h 45 min into the step");
    }

    /** Tests and dwells as the case file lists them; the last two of the stamp wait for the wax, and those of the paper have no time. */
    @Test
    void each_drop_of_a_test_has_a_timer_that_its_liquid_names() {
        assertThat(timers("tide-table")).filteredOn(timer -> timer.id().startsWith("timer-tests-"))
                .extracting(timer -> (timer.label() + ", " + timer.length()).replaceAll("\\h", " "))
                .containsExactly("Washing water, made gently alkaline: black printing ink, 2 h",
                        "Ethanol and water for misting: black printing ink, 20 min",
                        "Ethanol and water for misting: violet stamp-pad ink, 1 min",
                        "Deionised water: black printing ink, 25 min", "Deionised water: violet stamp-pad ink, 1 min",
                        "Wheat starch paste: black printing ink, 30 min");
        assertThat(timers("tide-table")).filteredOn(timer -> timer.id().startsWith("timer-test-again-"))
                .extracting(BenchTimer::seconds).containsExactly(20 * 60L, 120 * 60L);
        assertThat(timers("tide-table")).filteredOn(timer -> timer.kind() == BenchTimer.Kind.DROP)
                .allSatisfy(timer -> assertThat(timer.then()).as("drops stand side by side").isEmpty());
    }

    /** The tray of 55 · 42 cm takes 5.8 L at 25 mm; the sheet and its margin alone would need 5.1 L, which nobody pours. */
    @Test
    void where_a_tray_is_chosen_its_own_amounts_alone_stand_at_the_hand() {
        BenchStep wash = steps("tide-table").stream().filter(step -> step.anchor().equals("step-wash")).findFirst().orElseThrow();

        assertThat(wash.amounts()).extracting(Working::figure).contains("wash.tray-volume", "wash.tray-total")
                .doesNotContain("wash.volume", "wash.total");
        assertThat(wash.behind()).extracting(Working::figure).contains("wash.volume", "wash.total");
        assertThat(wash.follows()).containsExactly("wash", "lime-water", "bath");
    }

    private static List<BenchTimer> timers(String name) {
        return steps(name).stream().flatMap(step -> step.timers().stream()).toList();
    }

    private static List<BenchStep> steps(String name) {
        Library library = DemoSite.made().library();
        var worked = DemoSite.worked(name, library);
        return PageComposer.compose(worked, library,
                Clearance.on(DemoSite.DAY, worked.source().publication(), Audience.EVERYBODY)).pages()
                .stream().filter(page -> page.kind().equals("step-sheet")).flatMap(AllBlocks::of)
                .filter(BenchStrip.class::isInstance).map(BenchStrip.class::cast)
                .flatMap(strip -> strip.steps().stream()).toList();
    }

    private static List<Fact> reasons(Finding finding) {
        Library library = DemoSite.made().library();
        var checked = CaseChecker.check(CaseReader.read(CONTENT, CONTENT.resolve("cases/lock-plan")), library,
                DemoSite.DAY, new Deriver(library)::ph);
        var worked = new Deriver(library).derive(checked.treatment().orElseThrow(), List.of(finding)).worked();
        return PageComposer.compose(worked, library, Clearance.on(DemoSite.DAY, worked.source().publication(), Audience.EVERYBODY))
                .pages().stream()
                .filter(page -> page.kind().equals("step-sheet")).flatMap(page -> page.blocks().stream())
                .filter(Section.class::isInstance).map(Section.class::cast)
                .filter(section -> section.id().equals("reasons")).flatMap(section -> section.blocks().stream())
                .flatMap(block -> ((Facts) block).facts().stream()).toList();
    }
}
