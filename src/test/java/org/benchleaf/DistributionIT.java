package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Starts what {@code mvn package} leaves to be handed on, by its script, as a stranger's machine would. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class DistributionIT {

    private static final Path MADE = Path.of("target", "benchleaf");
    /** Worked by hand: 1 part of 1 + 4 in 500 g is 100 g. */
    private static final String[] DILUTION = {"calculate", "parts", "parts=1 + 4", "total=500 g", "--format", "json"};

    @TempDir
    private Path folder;
    private Path home;

    /** A run of the script. */
    private record Run(int code, String out, String err) {
    }

    @BeforeEach
    void copy_it_elsewhere() throws IOException {
        home = folder.resolve("a folder of programs/benchleaf");
        ChangedContent.copy(MADE, home);
        home.resolve("bin/benchleaf").toFile().setExecutable(true);
    }

    @Test
    void nothing_but_the_result_is_printed_whatever_archive_is_there() throws Exception {
        Run whole = run(Map.of(), DILUTION);
        assertThat(whole.code()).as(whole.err()).isZero();
        assertThat(whole.out()).startsWith("{").contains("100");
        assertThat(whole.err()).isEmpty();
        Path archive = home.resolve("lib/benchleaf.jsa");
        Files.write(archive, "of another Java".getBytes(StandardCharsets.UTF_8));
        assertThat(run(Map.of(), DILUTION)).isEqualTo(whole);
        Files.delete(archive);
        assertThat(run(Map.of(), DILUTION)).isEqualTo(whole);
    }

    @Test
    void it_starts_through_a_link() throws Exception {
        Path link = Files.createSymbolicLink(folder.resolve("benchleaf"), home.resolve("bin/benchleaf"));
        assertThat(started(link, Map.of(), "--version").out()).startsWith("benchleaf ");
    }

    @Test
    void files_with_names_of_any_script_are_read_in_a_locale_without_their_letters() throws Exception {
        Path content = folder.resolve("内容-Ωμέγα");
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), content);
        Run run = run(Map.of("LC_ALL", "C"), "check", "--content", content.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("1 case checked");
    }

    private Run run(Map<String, String> environment, String... words) throws Exception {
        return started(home.resolve("bin/benchleaf"), environment, words);
    }

    private Run started(Path script, Map<String, String> environment, String... words) throws Exception {
        List<String> command = new ArrayList<>(List.of(script.toString()));
        command.addAll(List.of(words));
        Path out = Files.createTempFile(folder, "out", ".txt");
        Path err = Files.createTempFile(folder, "err", ".txt");
        ProcessBuilder builder = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().putAll(environment);
        int code = builder.start().waitFor();
        return new Run(code, Files.readString(out), Files.readString(err));
    }
}
