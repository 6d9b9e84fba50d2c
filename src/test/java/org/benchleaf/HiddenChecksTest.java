package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An error that keeps other things from being asked says so in one line, with how many. */
class HiddenChecksTest {

    @TempDir
    private Path folder;

    @Test
    void an_error_in_the_steps_tells_how_many_rules_were_not_asked() throws IOException {
        assertThat(told("cases/tide/case.md", "      baths: 3\n", "      baths: three\n"))
                .containsPattern("tide: [1-9]\\d* of [1-9]\\d* rules were not asked.*, since the errors above stand in what they rest on");
    }

    @Test
    void a_studio_with_an_error_tells_that_nothing_was_worked_out() throws IOException {
        assertThat(told("studio.yaml", "name:", "nome:")).contains("Of no case were figures and hazards worked out");
    }

    @Test
    void a_case_without_an_error_of_form_says_nothing_of_the_kind() throws IOException {
        assertThat(told("studio.yaml", "name:", "name:")).contains("no errors").doesNotContain("not asked", "worked out");
    }

    private String told(String file, String from, String to) throws IOException {
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), folder);
        String text = Files.readString(folder.resolve(file));
        assertThat(text).contains(from);
        Files.writeString(folder.resolve(file), text.replace(from, to));
        StringWriter told = new StringWriter();
        PrintWriter out = new PrintWriter(told, true);
        Main.run(out, out, "check", "--content", folder.toString());
        return told.toString();
    }
}
