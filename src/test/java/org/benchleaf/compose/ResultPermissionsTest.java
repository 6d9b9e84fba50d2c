package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.Clearance.Output;
import org.benchleaf.derive.WorkedCase;
import org.benchleaf.model.Library;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What of the results is given out follows the permissions of the case. */
class ResultPermissionsTest {

    private static Library library;
    private static WorkedCase worked;

    @BeforeAll
    static void work() {
        library = DemoSite.made().library();
        worked = DemoSite.worked("tide-table", library);
    }

    private static List<String> files(boolean strengths, Output... outputs) {
        return PageComposer.compose(worked, library, new Clearance(DemoSite.DAY, Set.of(outputs), strengths, List.of()))
                .files().stream().map(DataFile::path).map(path -> path.substring(path.lastIndexOf('/') + 1)).toList();
    }

    @Test
    void the_public_alone_gets_measured_results_but_no_file_that_tells_strengths() {
        assertThat(files(false, Output.CASE_STUDY, Output.RESULTS, Output.FIGURES)).contains("result-1-ph.csv")
                .doesNotContain("figures.json");
    }

    @Test
    void figures_go_out_where_the_case_or_the_sheets_tell_strengths_anyway() {
        assertThat(files(true, Output.CASE_STUDY, Output.RESULTS, Output.FIGURES)).contains("figures.json");
        assertThat(files(false, Output.STEP_SHEET, Output.RESULTS, Output.FIGURES)).contains("figures.json");
    }

    @Test
    void without_permission_for_figures_or_for_results_there_are_none() {
        assertThat(files(true, Output.CASE_STUDY, Output.RESULTS)).doesNotContain("figures.json");
        assertThat(files(true, Output.CASE_STUDY, Output.FIGURES)).isEmpty();
    }
}
