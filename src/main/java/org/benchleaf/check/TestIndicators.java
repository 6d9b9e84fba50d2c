package org.benchleaf.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What a spot test may be made with that is neither a solution nor a material; a list that ships with the program. */
final class TestIndicators {

    private static final String RESOURCE = "/reference/test-indicators.txt";
    private static final List<String> ALL = load();

    private TestIndicators() {
    }

    static List<String> all() {
        return ALL;
    }

    private static List<String> load() {
        try (InputStream in = TestIndicators.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("the program is not whole: " + RESOURCE + " is missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(RESOURCE + " cannot be read", broken);
        }
    }
}
