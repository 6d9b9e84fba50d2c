package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo, published by programs that believe to be in other places: every file has the same bytes. */
class SameBytesTest {

    @TempDir
    private Path folder;

    @Test
    void the_demo_is_the_same_in_every_zone_locale_and_encoding_and_with_any_number_of_threads() throws Exception {
        Map<String, String> first = published("one", Path.of("content"), 1,
                "-Duser.timezone=UTC", "-Duser.language=en", "-Duser.country=GB", "-Dfile.encoding=UTF-8");
        assertThat(first).hasSizeGreaterThan(50).containsKey("index.html");
        assertThat(published("two", Path.of("content"), 4,
                "-Duser.timezone=Pacific/Kiritimati", "-Duser.language=tr", "-Duser.country=TR",
                "-Dfile.encoding=ISO-8859-1", "-Duser.name=somebody", "-Dline.separator=\r\n")).isEqualTo(first);
        Path copy = folder.resolve("copied/in reverse");
        copyInReverse(Path.of("content"), copy);
        assertThat(published("three", copy, 2,
                "-Duser.timezone=America/St_Johns", "-Duser.language=ar", "-Duser.country=EG",
                "-Duser.extensions=u-nu-arab-ca-islamic", "-Dfile.encoding=windows-1252")).isEqualTo(first);
    }

    /** Hashes of all files, by path. */
    private Map<String, String> published(String name, Path content, int threads, String... places) throws Exception {
        Path site = folder.resolve(name).resolve("site");
        List<String> options = new ArrayList<>(List.of("-Xmx1g", "-Djava.awt.headless=true"));
        options.addAll(List.of(places));
        List<String> command = OwnJava.command(options, "publish", "--content", content.toString(), "--site", site.toString(),
                "--on", "2026-11-25", "--threads", String.valueOf(threads));
        Path output = folder.resolve(name + ".txt");
        Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(output.toFile()).start();
        assertThat(process.waitFor()).as(() -> said(output)).isZero();
        return hashes(site);
    }

    private static String said(Path output) {
        try {
            return Files.readString(output);
        } catch (IOException unreadable) {
            return unreadable.toString();
        }
    }

    private static Map<String, String> hashes(Path site) throws IOException, NoSuchAlgorithmException {
        Map<String, String> hashes = new TreeMap<>();
        try (Stream<Path> all = Files.walk(site)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                hashes.put(site.relativize(file).toString().replace('\\', '/'), HexFormat.of().formatHex(
                        MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file))));
            }
        }
        return hashes;
    }

    /** A folder lists its files in the order in which they came, on many disks. */
    private static void copyInReverse(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.filter(Files::isRegularFile).sorted(Comparator.reverseOrder()).toList()) {
                Path copy = to.resolve(from.relativize(path).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(path, copy);
            }
        }
    }
}
