package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.benchleaf.message.OpenQuestion;
import org.benchleaf.message.Severity;
import org.benchleaf.run.Told;
import org.junit.jupiter.api.Test;

/** Messages in words of no language: what they ask goes together by what they carry, not by how it is said. */
class PublicationGapsTest {

    @Test
    void what_one_missing_fact_leaves_open_goes_together_however_it_is_said() {
        List<String> lines = PublicationGaps.of(Map.of("a.md", List.of(
                told(3, "RULE-A", "Lorem", new OpenQuestion("the ink is not known", "wash")),
                told(5, "RULE-B", "Ipsum step 'other'", new OpenQuestion("the ink is not known", "line")),
                told(7, "RULE-C", "Dolor", new OpenQuestion("the sizing is not known", "")),
                told(9, "RULE-D", "Whether it is kept cannot be told: the ink is not known.", OpenQuestion.NONE))));
        assertThat(lines).hasSize(5);
        assertThat(lines.get(0)).startsWith("a.md is retold, and its publication leaves 3 open");
        assertThat(lines.subList(1, 4)).containsExactly(
                "  line 3, RULE-A, RULE-B: Whether these rules are kept at steps 'wash', 'line' cannot be told: the ink is not known.",
                "  line 7, RULE-C: Dolor",
                "  line 9, RULE-D: Whether it is kept cannot be told: the ink is not known.");
    }

    private static Told told(int line, String code, String what, OpenQuestion asks) {
        return new Told("a.md", line, 1, code, Severity.WARNING, what, new Told.Listed(Told.List.SOURCE, "", what, "", asks));
    }
}
