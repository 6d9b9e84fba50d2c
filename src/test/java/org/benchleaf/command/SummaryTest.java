package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.message.Severity;
import org.benchleaf.pack.Edition;
import org.benchleaf.run.Publishing;
import org.benchleaf.run.Told;
import org.junit.jupiter.api.Test;

/** The last lines of a run of publishing, as the README shows them. */
class SummaryTest {

    private static final Path SITE = Path.of("site");
    private static final Edition EDITION = new Edition(106, 229, 9_634_000, 12, 3, "cases/parish-map/index.html", 931_400);

    @Test
    void an_edition_is_told_with_its_warnings_by_kind_the_commonest_first() {
        List<Told> told = Stream.of(told(Severity.ADVICE, "RULE-GRAIN", 1), told(Severity.WARNING, "PICTURE-007", 2),
                told(Severity.WARNING, "CLAIM-003", 5)).flatMap(List::stream).toList();

        assertThat(Summary.of(new Publishing.Outcome(told, List.of(EDITION), 5, 4, 3), List.of(SITE), Optional.empty(), 2_540_000_000L))
                .containsExactly(
                "Published in site/index.html",
                "  cases     4 of 5, 3 unchanged",
                "  pages     106, with all files 229 (9.6 MB)",
                "  written   12, removed 3",
                "  heaviest  cases/parish-map/index.html (932 kB with its pictures)",
                "  templates the program's own",
                "  warning   7: CLAIM-003 ×5, PICTURE-007 ×2",
                "  advice    1: RULE-GRAIN",
                "  time      2.5 s");
    }

    @Test
    void it_fits_on_one_screen_however_many_kinds_there_are() {
        List<Told> told = IntStream.range(0, 40).mapToObj(kind -> told(Severity.ERROR, String.format("FORM-%03d", kind), 1))
                .flatMap(List::stream).toList();

        List<String> lines = Summary.of(new Publishing.Outcome(told, List.of(), 5, 0, 0), List.of(SITE), Optional.of(Path.of("look")), 0);

        assertThat(lines).contains("  templates look").hasSize(4).first().isEqualTo("Nothing was published: 40 errors in 5 cases.");
        assertThat(lines.get(2)).startsWith("  error     40: FORM-000, FORM-001").endsWith("FORM-011 and 28 more kinds");
    }

    /** Of a case that its publication's licence keeps back, that is why there are no pages, however much else is advised. */
    @Test
    void what_keeps_a_case_back_stands_first() {
        List<Told> told = Stream.concat(
                IntStream.range(0, 30).mapToObj(kind -> told(Severity.WARNING, String.format("RULE-%02d", kind), 9)),
                Stream.of(told(Severity.WARNING, "CONS-020", 1))).flatMap(List::stream).toList();

        assertThat(Summary.of(new Publishing.Outcome(told, List.of(EDITION), 1, 0, 0), List.of(SITE), Optional.empty(), 0))
                .anyMatch(line -> line.startsWith("  warning   271: CONS-020, RULE-00 ×9"));
    }

    private static List<Told> told(Severity severity, String code, int times) {
        return IntStream.range(0, times).mapToObj(line -> new Told("case.md", line, 1, code, severity, "text",
                Told.Listed.NOWHERE)).toList();
    }
}
