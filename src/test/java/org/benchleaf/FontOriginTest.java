package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Each font is the file that DEVELOPERS.md names with version, origin and sum. The sums of serif, serif-italic and sans are those of
 * the files in the packages of the npm registry.
 */
class FontOriginTest {

    private static final Path FONTS = Path.of("src/main/resources/fonts");
    private static final Pattern ROW = Pattern.compile("(?m)^\\| ([a-z-]+\\.woff2) \\| [^|]*\\| `([0-9a-f]{64})` \\|$");

    private static String sum(Path file) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
        } catch (IOException | NoSuchAlgorithmException broken) {
            throw new IllegalStateException(broken);
        }
    }

    @Test
    void every_font_is_the_file_that_is_named() throws IOException {
        Map<String, String> named = ROW.matcher(Files.readString(Path.of("DEVELOPERS.md"))).results()
                .collect(Collectors.toMap(row -> row.group(1), row -> row.group(2), (one, other) -> one, TreeMap::new));
        try (Stream<Path> files = Files.list(FONTS)) {
            assertThat(files.filter(file -> file.toString().endsWith(".woff2"))
                    .collect(Collectors.toMap(file -> file.getFileName().toString(), FontOriginTest::sum))).isNotEmpty().isEqualTo(named);
        }
    }
}
