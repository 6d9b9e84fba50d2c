package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A second function of the same name in one script replaces the first without a word (ECMAScript, function declarations). */
class ScriptNamesTest {

    /** What a script declares for all of itself stands two spaces in, within the one function that it is. */
    private static final Pattern DECLARED = Pattern.compile("(?m)^  (?:function|var|let|const) +([\\w$]+)");

    @Test
    void no_name_is_declared_twice_in_a_script() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("templates"))) {
            List<Path> scripts = files.filter(file -> file.toString().endsWith(".js")).toList();
            assertThat(scripts).hasSizeGreaterThan(5);
            for (Path script : scripts) {
                assertThat(DECLARED.matcher(Files.readString(script)).results().map(MatchResult::group).map(String::strip)
                        .map(line -> line.replaceAll(".* ", "")).toList()).as(script.toString()).doesNotHaveDuplicates();
            }
        }
    }
}
