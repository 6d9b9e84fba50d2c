package org.benchleaf.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Pieces of sentences, in English and in a language whose words, numbers and direction differ. */
class ClauseTest {

    private static final Map<String, String> FRENCH = Map.of("{value}, which is {kind}", "{value}, qui est {kind}", "a length",
            "une longueur", "{low} to {high}", "de {low} à {high}");

    @Test
    void a_clause_reads_in_english_as_it_was_written() {
        assertThat(length().english()).isEqualTo("1.5 to 20 mm, which is a length");
    }

    @Test
    void the_values_of_a_clause_stay_apart_from_its_words() {
        assertThat(length().said(new TextLanguage(text -> FRENCH.getOrDefault(text, text), ',', false)))
                .isEqualTo("de 1,5 à 20 mm, qui est une longueur");
    }

    /** U+2066 and U+2069 set a piece apart that runs from left to right: Unicode Standard Annex 9, section 2.4. */
    @Test
    void values_are_set_apart_where_the_language_runs_from_right_to_left() {
        assertThat(Clause.value("412 mm × 298 mm").said(new TextLanguage(text -> text, '.', true)))
                .isEqualTo("\u2066412 mm × 298 mm\u2069");
    }

    /** Digits U+0660 to U+0669, decimal separator U+066B, comma U+060C: Unicode, block Arabic. */
    @Test
    void what_is_typed_is_read_with_the_signs_of_its_language() {
        assertThat(new TextLanguage(text -> text, ',', false).typed("1,5; 20 mm")).isEqualTo("1.5, 20 mm");
        assertThat(new TextLanguage(text -> text, '.', true).typed("١٢٫٥، ٣ mm")).isEqualTo("12.5, 3 mm");
        assertThat(TextLanguage.ENGLISH.typed("1,5; 20 mm")).isEqualTo("1,5; 20 mm");
    }

    @Test
    void words_with_a_hole_for_which_there_is_no_value_are_told() {
        assertThatThrownBy(() -> Clause.of("a {length}").english()).isInstanceOf(IllegalStateException.class);
    }

    private static Clause length() {
        return Clause.of("{value}, which is {kind}", "value", Clause.of("{low} to {high}", "low", "1.5", "high", "20 mm"),
                "kind", Dimension.LENGTH.clause());
    }

    @Test
    void several_are_told_in_a_row_or_as_a_choice() {
        List<Clause> several = List.of(Clause.of("yes"), Clause.of("no"));
        assertThat(Clause.list(several).english()).isEqualTo("yes, no");
        assertThat(Clause.either(several).english()).isEqualTo("yes or no");
    }
}
