package org.benchleaf.compose.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.DemoSite;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.compose.AllBlocks;
import org.benchleaf.compose.PageComposer;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.derive.Deriver;
import org.benchleaf.derive.WorkedCase;
import org.benchleaf.model.Library;
import org.benchleaf.page.BenchStrip;
import org.benchleaf.page.Chart;
import org.benchleaf.read.CaseReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Drawing, text and figures of a case say the same. The figures changed here are those of the demo's tide table. */
class StepDrawingsTest {

    private static final Path CONTENT = Path.of("content");
    private static final Path TIDE_TABLE = CONTENT.resolve("cases/tide-table");
    private static final Pattern NUMBER = Pattern.compile("\\d++(?:\\.\\d++)?");

    @TempDir
    private Path home;

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            depth: 25 mm       | depth: 40 mm       | step-wash-tray      | 40 mm
            margin: 50 mm      | margin: 45 mm      | step-wash-tray      | 45 mm
            margin: 30 mm      | margin: 35 mm      | step-wash-lowering  | 35 mm
            distance: 40 cm    | distance: 25 cm    | step-relax-mist     | 25 cm
            beyond: 3 mm       | beyond: 5 mm       | step-fix-stamp-wax  | 5 mm
            [15 min, 30 min    | [20 min, 30 min    | step-dry-changes    | 20 min
            layers: 1          | layers: 2          | step-dry-stack      | 2 ×
            [polyester-web, felt], time: 3 d | [polyester-web], time: 3 d | step-dry-stack | Spun-bonded
            strip: 8 mm        | strip: 9 mm        | step-mend-bridge    | 9 mm
            lap: 5 mm          | lap: 7 mm          | step-mend-bridge    | 7 mm
            piece: 40 mm       | piece: 60 mm       | step-mend-bridge    | 60 mm
            """)
    void a_figure_that_changes_in_the_case_changes_lines_labels_and_text(String was, String is, String id, String label)
            throws IOException {
        Chart.Drawing before = drawings(DemoSite.worked("tide-table", DemoSite.made().library())).get(id);
        Chart.Drawing after = drawings(changed(was, is)).get(id);

        assertThat(labels(after)).contains(label);
        assertThat(plain(after.description())).contains(label).isNotEqualTo(plain(before.description()));
        assertThat(lines(after)).isNotEqualTo(lines(before));
    }

    @ParameterizedTest
    @ValueSource(strings = {"ferry-letter", "flood-poster", "lock-plan", "parish-map", "tide-table"})
    void every_number_of_a_drawing_stands_in_its_text(String name) {
        Map<String, Chart.Drawing> drawings = drawings(DemoSite.worked(name, DemoSite.made().library()));

        assertThat(drawings).isNotEmpty().allSatisfy((id, drawing) ->
                assertThat(numbers(plain(drawing.description()))).containsAll(numbers(labels(drawing))));
    }

    @Test
    void a_distance_that_is_not_on_record_is_said_to_be_so() throws IOException {
        Chart.Drawing drawing = drawings(changed(", distance: 40 cm", "")).get("step-relax-mist");

        assertThat(labels(drawing)).contains("distance not recorded").doesNotContain("cm");
        assertThat(drawing.description()).endsWith("From the nozzle to the sheet: distance not recorded.");
    }

    @Test
    void what_the_case_does_not_tell_is_not_drawn() throws IOException {
        assertThat(drawings(changed("faces: both, beyond: 3 mm, ", ""))).doesNotContainKey("step-fix-stamp-wax");
    }

    private WorkedCase changed(String was, String is) throws IOException {
        Path folder = home.resolve("cases/tide-table");
        try (Stream<Path> files = Files.walk(TIDE_TABLE)) {
            for (Path file : files.toList()) {
                Path copy = folder.resolve(TIDE_TABLE.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
        Path text = folder.resolve("case.md");
        assertThat(Files.readString(text)).contains(was);
        Files.writeString(text, Files.readString(text).replace(was, is));
        Library library = DemoSite.made().library();
        var checked = CaseChecker.check(CaseReader.read(home, folder), library, DemoSite.DAY, new Deriver(library)::ph);
        return new Deriver(library).derive(checked.treatment().orElseThrow(), List.of()).worked();
    }

    private static Map<String, Chart.Drawing> drawings(WorkedCase worked) {
        Map<String, Chart.Drawing> drawings = new LinkedHashMap<>();
        PageComposer.compose(worked, DemoSite.made().library(),
                        Clearance.on(DemoSite.DAY, worked.source().publication(), Audience.EVERYBODY)).pages().stream()
                .filter(page -> page.kind().equals("step-sheet")).flatMap(AllBlocks::of)
                .filter(BenchStrip.class::isInstance).map(BenchStrip.class::cast)
                .flatMap(strip -> strip.steps().stream()).flatMap(step -> step.drawings().stream())
                .forEach(drawing -> drawings.put(drawing.id(), drawing));
        return drawings;
    }

    private static String labels(Chart.Drawing drawing) {
        return plain(drawing.marks().stream().filter(mark -> mark.kind().equals("text")).map(Chart.Mark::text)
                .collect(Collectors.joining(" ")));
    }

    private static List<Chart.Mark> lines(Chart.Drawing drawing) {
        return drawing.marks().stream().filter(mark -> !mark.kind().equals("text")).toList();
    }

    private static List<String> numbers(String text) {
        return NUMBER.matcher(text).results().map(result -> result.group()).toList();
    }

    private static String plain(String text) {
        return text.replaceAll("\\h", " ");
    }
}
