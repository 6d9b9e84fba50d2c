package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import org.junit.jupiter.api.Test;

/** Looks into the jar that {@code mvn package} leaves. */
class JarIT {

    private static final Path JAR = Path.of("target", "benchleaf.jar");

    @Test
    void every_bundled_library_is_named_with_its_licence() throws IOException {
        try (JarFile jar = new JarFile(JAR.toFile())) {
            String notices = text(jar, "META-INF/licenses/NOTICES.md");
            List<String> bundled = jar.stream().filter(entry -> entry.getName().endsWith("/pom.properties"))
                    .map(entry -> artifact(jar, entry)).filter(name -> !name.equals("benchleaf")).toList();
            assertThat(bundled).hasSizeGreaterThan(20);
            assertThat(bundled).allSatisfy(name -> assertThat(notices).containsPattern("[ ,]" + name + "[ ,]"));
        }
    }

    @Test
    void the_licences_that_libraries_ship_are_kept_one_by_one() throws IOException {
        try (JarFile jar = new JarFile(JAR.toFile())) {
            assertThat(jar.stream().map(JarEntry::getName))
                    .contains("META-INF/benchleaf/LICENSE")
                    .anyMatch(name -> name.matches("META-INF/licenses/jsoup[^/]*/META-INF/jsoup/LICENSE"))
                    .anyMatch(name -> name.matches("META-INF/licenses/freemarker[^/]*/META-INF/LICENSE"))
                    .anyMatch(name -> name.matches("META-INF/licenses/thumbnailator[^/]*/META-INF/LICENSE"));
        }
    }

    private static String artifact(JarFile jar, JarEntry entry) {
        Properties properties = new Properties();
        try (var in = jar.getInputStream(entry)) {
            properties.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return properties.getProperty("artifactId");
    }

    private static String text(JarFile jar, String name) throws IOException {
        try (var in = jar.getInputStream(jar.getEntry(name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
