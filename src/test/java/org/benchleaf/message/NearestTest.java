package org.benchleaf.message;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words as they are mistyped, or written by someone who thinks in another language; what is meant is what a reader would say. */
class NearestTest {

    private static final List<String> KEYS = List.of("kind", "technique", "support", "size", "media", "items", "features", "thickness",
            "temperature", "material");

    @ParameterizedTest
    @CsvSource({"technik, technique", "technika, technique", "technic, technique", "tecnique, technique", "suport, support",
        "temperatur, temperature", "temperatura, temperature", "materiale, material", "medium, media", "szie, size", "mdeia, media",
        "tehcnqiue, technique"})
    void what_is_meant_is_found(String written, String meant) {
        assertThat(Nearest.to(written, KEYS)).contains(meant);
    }

    @Test
    void of_sentences_the_one_with_a_slip_is_found_and_not_one_of_the_same_length() {
        List<String> sentences = List.of("Lay the sheet on the felt and let it rest.", "Put the felt on a board and let it wait.");

        assertThat(Nearest.to("Lay the sheet on teh felt and let it rest", sentences)).contains(sentences.get(0));
        assertThat(Nearest.to("Weigh the glass at noon and write it down.", sentences)).isEmpty();
        assertThat(Nearest.several("Put the felt on a bord and let it wiat.", sentences)).containsExactly(sentences.get(1));
    }

    @ParameterizedTest
    @CsvSource({"teint", "tech", "papier", "grammage", "kid glove"})
    void nothing_is_found_for_another_word(String written) {
        assertThat(Nearest.to(written, KEYS)).isEmpty();
    }
}
