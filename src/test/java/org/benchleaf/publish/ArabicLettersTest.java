package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Arabic letters in the shapes in which they join. */
class ArabicLettersTest {

    /**
     * The words are spelled by hand from the names in the code chart Arabic Presentation Forms-B of the Unicode Standard: beh initial
     * U+FE91, yeh medial U+FEF4, teh final U+FE96; seen initial U+FEB3, ligature lam with alif final U+FEFC, meem isolated U+FEE1; dal
     * isolated
     * U+FEA9, alif isolated U+FE8D, reh isolated U+FEAD; mark of doubling between joined letters.
     */
    @ParameterizedTest
    @CsvSource({
        "بيت, \uFE91\uFEF4\uFE96",
        "سلام, \uFEB3\uFEFC\uFEE1",
        "دار, \uFEA9\uFE8D\uFEAD",
        "مدّ, \uFEE3\uFEAA\u0651",
        "لا, \uFEFB",
        "ء, \uFE80",
        "pH 7, pH 7"
    })
    void a_letter_has_the_shape_that_its_neighbours_ask_for(String word, String shaped) {
        assertThat(ArabicLetters.shaped(word)).isEqualTo(shaped);
    }

    /** Unicode Standard Annex 15: compatibility composition takes each shape back to its letter. */
    @Test
    void every_word_of_the_interface_can_be_read_back() throws IOException {
        List<String> lines = Files.readAllLines(Path.of("src/main/resources/words/interface_ar.properties"));
        assertThat(lines).hasSizeGreaterThan(1000).allSatisfy(line -> assertThat(
                Normalizer.normalize(ArabicLetters.shaped(line), Normalizer.Form.NFKC))
                .isEqualTo(Normalizer.normalize(line, Normalizer.Form.NFKC)));
    }
}
