package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The choices above the evidence of a measure; of the demo's two cases with a surface pH one is on rag paper. */
@Execution(ExecutionMode.CONCURRENT)
class EvidenceIT {

    private static final String PAGE = "evidence/ph.html";

    @Test
    void a_choice_hides_the_rows_that_lack_it_in_the_drawing_and_in_the_table_and_tells_how_many_are_left() {
        Windows.lend(window -> {
            window.open(PAGE);
            assertThat(rows(window, "[data-has]")).hasSize(2);
            choose(window, "paper", "paper-rag");
            assertThat(rows(window, "[data-has]")).singleElement().asString().contains("The letter that was not washed");
            assertThat(rows(window, ".evidence-plot tbody tr")).singleElement().asString().contains("4.9");
            assertThat(window.run("return document.querySelector('[data-evidence-status]').textContent;"))
                    .isEqualTo("1 of 2 rows on this page are shown.");
            choose(window, "paper", null);
            assertThat(rows(window, "[data-has]")).hasSize(2);
            assertThat(rows(window, ".evidence-plot tbody tr")).hasSize(3);
        });
    }

    /** Which cases have what was chosen, read in the case files of the demo: technique, paper and kinds of their steps. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            colour | 4 | technique-cyanotype  |                 |                   | A blue plan
            colour | 4 |                      | paper-rag       |                   | A blue plan; A parish map
            colour | 4 |                      | paper-wood-pulp |                   | A poster; A tide table
            colour | 4 |                      |                 | step-humidification | A blue plan; A parish map
            colour | 4 |                      | paper-wood-pulp | step-washing      | A tide table
            colour | 4 | technique-cyanotype  | paper-wood-pulp |                   |
            size   | 3 |                      |                 | step-mending      | A blue plan; A parish map; A tide table
            size   | 3 | technique-lithograph-hand-coloured | paper-rag | step-infilling | A parish map
            ph     | 2 | technique-handwriting |                | step-housing      | The letter
            """)
    void choices_leave_the_cases_that_have_all_of_them(String measure, int all, String technique, String paper, String step, String cases) {
        List<String> left = cases == null ? List.of() : List.of(cases.split("; "));
        Windows.lend(window -> {
            window.open("evidence/" + measure + ".html");
            choose(window, "technique", technique);
            choose(window, "paper", paper);
            choose(window, "step", step);
            List<String> shown = rows(window, "[data-has]");
            assertThat(shown).hasSameSizeAs(left);
            assertThat(left).allSatisfy(one -> assertThat(shown).anyMatch(row -> row.strip().startsWith(one)));
            assertThat(window.run("return document.querySelector('[data-evidence-status]').textContent;"))
                    .isEqualTo(left.size() + " of " + all + " rows on this page are shown.");
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

    /** Chooses a value of a list; every value where none is named. */
    private static void choose(Window window, String list, String value) {
        window.run("const list = document.querySelector('#only-' + arguments[0]); list.value = arguments[1];"
                + " list.dispatchEvent(new Event('change'));", list, value == null ? "" : value);
    }

    private static List<String> rows(Window window, String selector) {
        return window.texts("return [...document.querySelectorAll('" + selector
                + "')].filter(row => row.checkVisibility()).map(row => row.textContent);");
    }
}
