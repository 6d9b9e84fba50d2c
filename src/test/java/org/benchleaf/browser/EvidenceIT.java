package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** The choices above the evidence of a measure; of the demo's two cases with a surface pH one is on rag paper. */
@Execution(ExecutionMode.CONCURRENT)
class EvidenceIT {

    private static final String PAGE = "evidence/ph.html";

    @Test
    void a_choice_hides_the_rows_that_lack_it_in_the_drawing_and_in_the_table_and_tells_how_many_are_left() {
        Windows.lend(window -> {
            window.open(PAGE);
            assertThat(rows(window, "[data-has]")).hasSize(2);
            choose(window, "paper-rag");
            assertThat(rows(window, "[data-has]")).singleElement().asString().contains("The letter that was not washed");
            assertThat(rows(window, ".evidence-plot tbody tr")).singleElement().asString().contains("4.9");
            assertThat(window.run("return document.querySelector('[data-evidence-status]').textContent;"))
                    .isEqualTo("1 of 2 rows on this page are shown.");
            choose(window, "");
            assertThat(rows(window, "[data-has]")).hasSize(2);
            assertThat(rows(window, ".evidence-plot tbody tr")).hasSize(3);
        });
    }

    @Test
    void without_scripts_every_row_stands_and_no_choice_is_offered() {
        Windows.lend(window -> {
            window.letScriptsRun(false);
            try {
                window.open(PAGE);
                assertThat(rows(window, "[data-has]")).hasSize(2);
                assertThat(rows(window, ".evidence-filter")).isEmpty();
            } finally {
                window.letScriptsRun(true);
            }
        });
    }

    private static void choose(Window window, String value) {
        window.run("const list = document.querySelector('#only-paper'); list.value = '" + value
                + "'; list.dispatchEvent(new Event('change'));");
    }

    private static List<String> rows(Window window, String selector) {
        return window.texts("return [...document.querySelectorAll('" + selector
                + "')].filter(row => row.checkVisibility()).map(row => row.textContent);");
    }
}
