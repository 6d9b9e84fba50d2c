package org.benchleaf.compose.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.PageComposer;
import org.benchleaf.compose.part.Clearance.Output;
import org.benchleaf.derive.WorkedCase;
import org.benchleaf.model.Library;
import org.benchleaf.page.DataFile;
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

    private static List<String> files(Output... outputs) {
        return PageComposer.compose(worked, library, new Clearance(DemoSite.DAY, Audience.EVERYBODY, Set.of(outputs),
                Set.of(outputs), true, List.of())).files().stream().map(DataFile::path)
                .map(path -> path.substring(path.lastIndexOf('/') + 1)).toList();
    }

    @Test
    void data_and_figures_go_out_each_with_its_own_permission() {
        assertThat(files(Output.RESULTS, Output.DATA)).contains("result-1-ph.csv").doesNotContain("figures.json");
        assertThat(files(Output.RESULTS, Output.FIGURES)).containsExactly("figures.json");
        assertThat(files(Output.RESULTS)).isEmpty();
    }

    @Test
    void without_permission_for_results_there_are_none() {
        // How the case study is cited, and the object with what was done, go with the case study.
        assertThat(files(Output.CASE_STUDY, Output.FIGURES, Output.DATA))
                .allMatch(file -> file.startsWith("reference.") || file.equals("linked-art.json"));
    }
}
