package org.benchleaf.compose.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Stems by Snowball's published stemmers. English pairs are of the sample vocabulary on snowballstem.org/algorithms/english
 * (from memory), cut to what the word itself begins with.
 */
class StemsTest {

    @Test
    void forms_of_an_english_word_have_one_stem() {
        Stems english = Stems.in("en");
        assertThat(english.of("consign consigned consigning consignment")).containsExactly("consign", "consign", "consign", "consign");
        assertThat(english.of("knots knotted kneeling")).containsExactly("knot", "knot", "kneel");
        assertThat(english.of("study")).containsExactly("stud");
    }

    @Test
    void another_language_has_its_own_forms_and_one_without_a_stemmer_keeps_its_words() {
        assertThat(Stems.in("de").of("aufeinander aufeinanderfolge aufeinanderfolgen")).containsExactly("aufeinand", "aufeinanderfolg",
                "aufeinanderfolg");
        assertThat(Stems.in("ja").of("消しゴム")).isEqualTo(List.of("消しコム"));
    }

    /**
     * Spellings of one word, and the article behind what is written together with it (A Reference Grammar of Modern Standard Arabic, from
     * memory).
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"fr | l’œuvre de l'eau | oeuvre de leau | oeuvr,eau", "ar | الجدول | جـــدول | جدول",
        "ar | أوراق | اوراق | اوراق", "ar | بالورقة | الورقه | ورقه", "ar | المبنى | مبني | مبني", "ar | مُدَّة | مده | مده",
        "cy | tŷ dŵr | ty dwr | dwr"})
    void spellings_of_one_word_have_one_stem(String language, String written, String otherwise, String stems) {
        assertThat(String.join(",", Stems.in(language).of(written))).isEqualTo(stems);
        assertThat(Stems.in(language).of(otherwise)).contains(stems.split(",")[0]);
    }

    @Test
    void numbers_short_words_and_very_common_words_are_not_looked_for() {
        assertThat(Stems.in("en").of("The pH of 12 sheets is in it")).containsExactly("ph", "sheet");
    }

    @Test
    void packed_words_share_their_beginnings() {
        assertThat(WordList.packed(List.of("wash", "bleach", "bleachburn", "wax"))).isEqualTo("AbleachGburnAwashCx");
    }
}
