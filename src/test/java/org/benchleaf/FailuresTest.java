package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** Whatever is thrown inside a command, its user sees one message that says what to do, and the exit code 3. */
class FailuresTest {

    private static final Path SOUND = Path.of("src/test/resources/sound/base");

    @TempDir
    private Path folder;
    private Path content;

    @BeforeEach
    void copy() throws IOException {
        content = folder.resolve("content");
        ChangedContent.copy(SOUND, content);
    }

    static Stream<Arguments> troubles() {
        Map<String, Throwable> thrown = Map.of("SITE-019 memory", new OutOfMemoryError("a secret"),
                "SITE-019 StackOverflowError", new StackOverflowError("a secret"),
                "SITE-019 Benchleaf itself failed", new NoClassDefFoundError("a secret"),
                "SITE-019 IllegalStateException", new IllegalStateException("a secret"),
                "SITE-006 not permitted", new AccessDeniedException("a file"));
        return Stream.of("check", "figures tide", "publish").flatMap(command ->
                Stream.of("studio.yaml", "cases/tide/case.md").flatMap(file ->
                        thrown.entrySet().stream().map(one -> Arguments.of(command, file, one.getKey(), one.getValue()))));
    }

    @ParameterizedTest(name = "{0}, {1}: {2}")
    @MethodSource("troubles")
    void whatever_a_stage_throws_becomes_one_message(String command, String file, String said, Throwable thrown) {
        FailingDisk disk = new FailingDisk(FileSystems.getDefault());
        disk.meets((kind, path) -> {
            if (kind == FailingDisk.Operation.READ && path.endsWith(file)) {
                rethrow(thrown);
            }
        });
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine line = Main.line(new PrintWriter(out), new PrintWriter(err, true))
                .registerConverter(Path.class, disk::path);
        String site = command.equals("publish") ? " --on 2026-06-01 --site " + folder.resolve("site") : "";
        int code = Main.run(line, (command + " --content " + content + site).split(" "));
        assertThat(code).as(err.toString()).isEqualTo(3);
        isOneMessage(err.toString(), said);
        assertThat(err.toString()).doesNotContain("a secret");
    }

    /** In a machine of its own: a file of the program that cannot be read, and a class that is broken. */
    @ParameterizedTest
    @CsvSource({
        "reference/methods.yaml, calculate soaking, SITE-019 Exception",
        "org/yaml/snakeyaml/LoaderOptions.class, calculate soaking, SITE-019 Error",
        "org/yaml/snakeyaml/LoaderOptions.class, check, SITE-019 Error",
        "org/yaml/snakeyaml/LoaderOptions.class, figures tide, SITE-019 Error",
        "org/yaml/snakeyaml/LoaderOptions.class, publish, SITE-019 Error",
    })
    void a_broken_program_says_so(String broken, String command, String said) throws IOException, InterruptedException {
        Path first = folder.resolve("first");
        Files.createDirectories(first.resolve(broken).getParent());
        Files.writeString(first.resolve(broken), "a: [");
        isOneMessage(run(List.of("-cp", first + System.getProperty("path.separator") + classPath()), command), said);
    }

    @Test
    void too_little_memory_is_told() throws IOException, InterruptedException {
        isOneMessage(run(List.of("-Xmx14m", "-XX:+UseSerialGC", "-cp", classPath()), "check"), "SITE-019 memory");
    }

    private static void isOneMessage(String told, String said) {
        assertThat(told.lines().filter(line -> line.matches(".*: (error|warning) .*"))).as(told).hasSize(1);
        assertThat(told).contains(said.split(" ", 2)).contains("\n    why: ", "\n    do:  ")
                .doesNotContain("\tat ", "Exception in thread", "java.lang.");
        assertThat(told.lines()).hasSizeLessThanOrEqualTo(6);
    }

    /** What the program writes to its error stream, ending with 3. */
    private String run(List<String> machine, String command) throws IOException, InterruptedException {
        Path err = folder.resolve("err.txt");
        Stream<String> words = Stream.of(Stream.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()),
                machine.stream(), Stream.of("org.benchleaf.Main"), Stream.of(command.split(" ")),
                command.startsWith("calculate") ? Stream.<String>of() : Stream.of("--content", content.toString()),
                command.equals("publish") ? Stream.of("--site", folder.resolve("site").toString()) : Stream.<String>of())
                .flatMap(part -> part);
        Process process = new ProcessBuilder(words.toList()).redirectError(err.toFile())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        int code = process.waitFor();
        String told = Files.readString(err, StandardCharsets.UTF_8);
        assertThat(code).as(told).isEqualTo(3);
        return told;
    }

    private static String classPath() {
        return System.getProperty("java.class.path");
    }

    private static void rethrow(Throwable thrown) throws IOException {
        if (thrown instanceof Error error) {
            throw error;
        }
        if (thrown instanceof RuntimeException broken) {
            throw broken;
        }
        throw (IOException) thrown;
    }
}
