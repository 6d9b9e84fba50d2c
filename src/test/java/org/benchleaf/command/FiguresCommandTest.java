package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Checks what the figures command prints and with which code it ends. */
class FiguresCommandTest {

    private static final String CONTENT = "src/test/resources/sound/base";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        return new CommandLine(new FiguresCommand()).setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true)).execute(arguments);
    }

    @Test
    void a_case_is_printed_with_its_working() {
        assertThat(run("tide", "--content", CONTENT)).isZero();
        assertThat(out.toString()).contains("wash.volume = 5.094 L", "formula: V = (h + 2 m)(w + 2 m) d");
    }

    @Test
    void the_same_figures_come_as_json_and_only_they_go_to_the_output() throws IOException {
        assertThat(run("tide", "--format", "json", "--content", CONTENT)).isZero();
        assertThat(new ObjectMapper().readTree(out.toString()).get("figures").get(0).fieldNames()).toIterable()
                .contains("id", "label", "value", "low", "high", "unit", "formula", "inputs", "sources");
    }

    @Test
    void several_sheets_need_more() {
        assertThat(run("tide", "--sheets", "6", "--content", CONTENT)).isZero();
        // By hand: 512 × 398 × 25 mm × 3 baths × 6 sheets, each in a tray of its own = 91.70 L.
        assertThat(out.toString()).contains("wash.total = 91.7 L");
    }

    @Test
    void an_unknown_case_is_a_wrong_command_and_names_the_cases() {
        assertThat(run("tidde", "--content", CONTENT)).isEqualTo(2);
        assertThat(err.toString()).contains("tide");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void no_sheets_at_all_is_a_wrong_command() {
        assertThat(run("tide", "--sheets", "0", "--content", CONTENT)).isEqualTo(2);
        assertThat(run("tide", "--sheets", "many", "--content", CONTENT)).isEqualTo(2);
        assertThat(run("tide", "--content", "nowhere")).isEqualTo(2);
    }

    @Test
    void a_case_with_errors_of_form_prints_messages_and_no_figures(@TempDir Path folder) throws IOException {
        assertThat(changed(folder, "level: foundation", "level: high")).isEqualTo(1);
        assertThat(err.toString()).contains("error FORM-");
        assertThat(out.toString()).isEmpty();
    }

    /** Whoever cited a figure that is not there looks for its name in this list. */
    @Test
    void a_case_that_cites_a_figure_which_is_not_there_prints_those_that_are(@TempDir Path folder) throws IOException {
        assertThat(changed(folder, "{wash.volume}", "{wash.volme}")).isEqualTo(1);
        assertThat(err.toString()).contains("error FIG-001", "wash.volume");
        assertThat(out.toString()).contains("wash.volume");
    }

    private int changed(Path folder, String from, String to) throws IOException {
        copy(Path.of(CONTENT), folder);
        Path file = folder.resolve("cases/tide/case.md");
        assertThat(Files.readString(file)).contains(from);
        Files.writeString(file, Files.readString(file).replace(from, to));
        return run("tide", "--content", folder.toString());
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
    }
}
