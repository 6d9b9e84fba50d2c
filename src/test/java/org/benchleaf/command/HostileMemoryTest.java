package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Contents made to fill the memory are told or published within 512 MiB, the library and the pictures included. The most that
 * each took stands in {@code target/hostile-memory.csv}.
 */
class HostileMemoryTest {

    private static final Path HOSTILE = Path.of("src/test/resources/hostile");
    /** Changes that make a text or a picture larger than its line says. */
    private static final List<String> LARGE = List.of("fill ", "stretch ", "repeat ", "picture ");

    @TempDir
    private Path folder;

    @Test
    void contents_made_to_fill_the_memory_end_within_512_mib() throws Exception {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx512m", "-Djava.awt.headless=true", "-cp", System.getProperty("java.class.path"),
                HostileRun.class.getName(), folder.toString()));
        List<String> contents = contents();
        command.addAll(contents);
        Path table = Path.of("target/hostile-memory.csv");
        Process run = new ProcessBuilder(command).redirectOutput(table.toFile())
                .redirectError(folder.resolve("errors").toFile()).start();
        int code = run.waitFor();
        assertThat(code).as(Files.readString(folder.resolve("errors"), StandardCharsets.UTF_8)).isZero();
        assertThat(contents).hasSizeGreaterThan(40);
        assertThat(Files.readAllLines(table)).hasSameSizeAs(contents)
                .allMatch(line -> line.matches("[a-z0-9-]+,[01],[0-9]+"));
    }

    private static List<String> contents() throws IOException {
        List<String> contents = new ArrayList<>();
        try (Stream<Path> all = Files.list(HOSTILE)) {
            for (Path each : all.sorted().toList()) {
                if (Files.readAllLines(each.resolve("change.txt")).stream().anyMatch(line -> LARGE.stream().anyMatch(line::startsWith))) {
                    contents.add(each.toString());
                }
            }
        }
        return contents;
    }
}
