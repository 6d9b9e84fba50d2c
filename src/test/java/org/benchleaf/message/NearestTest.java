package org.benchleaf.message;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words as they are mistyped, or written by someone who thinks in another language; what is meant is what a reader would say. */
class NearestTest {

    private static final List<String> KEYS = List.of("kind", "technique", "support", "size", "media", "items", "features", "thickness",
            "temperature", "material");

    @ParameterizedTest
    @CsvSource({"technik, technique", "technika, technique", "technic, technique", "tecnique, technique", "suport, support",
        "temperatur, temperature", "temperatura, temperature", "materiale, material", "medium, media"})
    void what_is_meant_is_found(String written, String meant) {
        assertThat(Nearest.to(written, KEYS)).contains(meant);
    }

    @ParameterizedTest
    @CsvSource({"teint", "tech", "papier", "grammage", "kid glove"})
    void nothing_is_found_for_another_word(String written) {
        assertThat(Nearest.to(written, KEYS)).isEmpty();
    }
}
