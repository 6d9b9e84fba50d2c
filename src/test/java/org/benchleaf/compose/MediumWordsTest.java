package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.benchleaf.compose.part.PartFacts;
import org.benchleaf.message.Place;
import org.benchleaf.model.Medium;
import org.benchleaf.words.Words;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The colour of a medium stands where the language puts an adjective: before the noun in English, after it in the other three (from
 * memory).
 */
class MediumWordsTest {

    @ParameterizedTest
    @CsvSource({"en, printing ink, black, black printing ink", "fr, encre d’imprimerie, noire, encre d’imprimerie noire",
        "cy, inc argraffu, du, inc argraffu du", "ar, حبر طباعة, أسود, حبر طباعة أسود"})
    void a_colour_has_its_place(String language, String medium, String colour, String told) {
        assertThat(PartFacts.coloured(Words.in(language), medium(medium, Optional.of(colour)))).isEqualTo(told);
        assertThat(PartFacts.coloured(Words.in(language), medium(medium, Optional.empty()))).isEqualTo(medium);
    }

    private static Medium medium(String is, Optional<String> colour) {
        return new Medium("text", is, colour, Optional.empty(), List.of(), Optional.empty(), List.of(), Place.file("case.md"));
    }
}
