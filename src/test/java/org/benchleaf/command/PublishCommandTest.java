package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.benchleaf.FailingDisk;
import org.benchleaf.FailingDisk.Operation;
import org.benchleaf.OwnJava;
import org.benchleaf.pack.SitePacker;
import org.benchleaf.run.Publishing;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** Publishing through the command, on a disk with troubles: one message, the right exit code, the old edition whole. */
class PublishCommandTest {

    private static final Path SOUND = Path.of("src/test/resources/sound/base");

    @TempDir
    private Path folder;
    private final FailingDisk disk = new FailingDisk(FileSystems.getDefault());
    private Path content;
    private Path site;
    private Map<String, String> before;

    @BeforeEach
    void publish_an_edition_and_change_a_word() throws IOException {
        content = folder.resolve("content");
        site = folder.resolve("site");
        try (Stream<Path> files = Files.walk(SOUND)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = content.resolve(SOUND.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
        assertThat(publish().code()).isZero();
        before = contents();
        Files.writeString(content.resolve("cases/tide/case.md"), "\nOne more line.\n", StandardOpenOption.APPEND);
    }

    @ParameterizedTest
    @ValueSource(strings = {"cases/tide/case.md", "cases/tide/case.es.md", "cases/tide/waves.csv",
        "cases/tide/pictures/before-recto.jpg", "studio.yaml", "glossary.yaml", "sources.yaml", "materials/papers.yaml",
        "classes/spring.yaml"})
    void a_file_that_may_not_be_read_is_named(String file) throws IOException {
        disk.meets((kind, path) -> {
            if (kind == Operation.READ && path.endsWith(file)) {
                throw new AccessDeniedException(path.toString());
            }
        });
        Said said = publish();
        assertThat(said.code()).isEqualTo(3);
        assertThat(said.messages()).containsOnlyOnce("error SITE-006").contains(file, "it is not permitted");
        assertThat(contents()).isEqualTo(before);
    }

    @Test
    void a_site_that_a_link_leads_into_the_content_is_refused() throws IOException {
        Path real = Files.createDirectories(folder.resolve("studio/content"));
        Path link = Files.createSymbolicLink(folder.resolve("elsewhere"), real);
        StringWriter told = new StringWriter();
        int code = new CommandLine(new PublishCommand()).setErr(new PrintWriter(told)).setOut(new PrintWriter(told))
                .execute("--content", real.toString(), "--site", link.resolve("new/site").toString());
        assertThat(code).isEqualTo(2);
        assertThat(told.toString()).contains("--site", "lie in each other");
    }

    @Test
    void a_full_disk_is_told() throws IOException {
        disk.meets((kind, path) -> {
            if (kind.fills()) {
                throw new FileSystemException(path.toString(), null, "No space left on device");
            }
        });
        Said said = publish();
        assertThat(said.code()).isEqualTo(3);
        assertThat(said.messages()).containsOnlyOnce("error SITE-").contains("SITE-005", "No space left on device");
        assertThat(contents()).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"cases/tide/case.md", "cases/tide/pictures/before-recto.jpg"})
    void a_file_that_changes_while_it_is_read_is_named(String file) throws IOException {
        int[] reads = {0};
        disk.meets((kind, path) -> {
            if (kind == Operation.READ && path.endsWith(file) && ++reads[0] == 2) {
                Files.write(disk.behind(path), new byte[] {'\n'}, StandardOpenOption.APPEND);
            }
        });
        Said said = publish();
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.messages()).containsOnlyOnce("error SITE-").contains("SITE-007", file);
        assertThat(contents()).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"studio.yaml", "glossary.yaml", "sources.yaml", "materials/papers.yaml", "classes/spring.yaml"})
    void a_shared_file_that_changes_while_a_case_is_read_is_named(String file) throws IOException {
        int[] reads = {0};
        disk.meets((kind, path) -> {
            if (kind == Operation.READ && path.endsWith("cases/tide/case.md") && ++reads[0] == 3) {
                Files.writeString(content.resolve(file), "\n# changed\n", StandardOpenOption.APPEND);
            }
        });
        Said said = publish();
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.messages()).containsOnlyOnce("error SITE-").contains("SITE-007", file);
        assertThat(contents()).isEqualTo(before);
        disk.meets((kind, path) -> { });
        assertThat(publish().code()).isZero();
    }

    @Test
    void a_second_run_in_another_program_says_so_and_leaves() throws IOException, InterruptedException {
        try (SitePacker first = SitePacker.open(site)) {
            assertThat(first.told().isEmpty()).isTrue();
            Path output = folder.resolve("output.txt");
            Process second = new ProcessBuilder(OwnJava.command(List.of(), "publish", "--content",
                    content.toString(), "--site", site.toString())).redirectErrorStream(true)
                    .redirectOutput(output.toFile()).start();
            assertThat(second.waitFor()).isEqualTo(3);
            assertThat(Files.readString(output)).containsOnlyOnce("error SITE-").contains("SITE-001");
        }
        assertThat(contents()).isEqualTo(before);
    }

    /** What a run said, and its exit code. */
    private record Said(int code, String messages) {
    }

    private Said publish() {
        StringWriter messages = new StringWriter();
        int code = new CommandLine(new PublishCommand()).registerConverter(Path.class, disk::path)
                .setErr(new PrintWriter(messages, true)).setOut(new PrintWriter(new StringWriter()))
                .execute("--content", content.toString(), "--site", site.toString(), "--on", "2026-06-01");
        return new Said(code, messages.toString());
    }

    private Map<String, String> contents() throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> all = Files.walk(site)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                contents.put(site.relativize(file).toString(),
                        Files.readString(file, java.nio.charset.StandardCharsets.ISO_8859_1));
            }
        }
        return contents;
    }
}
