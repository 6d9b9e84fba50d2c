package org.benchleaf.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Texts are set as their language writes them. What is expected are the rules of the Lexique des règles typographiques en usage à
 * l'Imprimerie nationale (from memory), and SI Brochure (2019), 5.4.4: the decimal marker is the point or the comma on the line.
 */
class TypeSettingTest {

    private static final TypeSetting FRENCH = TypeSetting.in(Words.in("fr"));

    /** A narrow space is written as an underline here. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', ignoreLeadingAndTrailingWhitespace = false, value = {
        "Méthode: somme|Méthode_: somme", "Méthode : somme|Méthode_: somme", "Que faire ?|Que faire_?", "Attention!|Attention_!",
        "« juste » |«_juste_» ", "«juste»|«_juste_»", "a; b|a_; b", "déjà_: là|déjà_: là", "10:04|10:04",
        "https://a.b/c?d=1.5|https://a.b/c?d=1.5",
        "0.5 g|0,5 g", "96 % v/v|96_% v/v", "-2.5 à +0.25|-2,5 à +0,25", "pH 4.4, pH 4.5, pH 7|pH 4,4_; pH 4,5_; pH 7",
        "75.9, 3.6|75,9_; 3,6",
        "2, 4 et 5|2, 4 et 5", "CC-BY-4.0|CC-BY-4.0", "CC BY 4.0|CC BY 4.0", "3.2.3.3|3.2.3.3", "12.5.|12,5.", "v1.2|v1.2"})
    void french_has_commas_and_narrow_spaces(String text, String expected) {
        String set = FRENCH.set(text.replace('_', '\u202f'));
        assertThat(set).isEqualTo(expected.replace('_', '\u202f'));
        assertThat(FRENCH.set(set)).isEqualTo(set);
        assertThat(set.replaceAll("\\D", "")).isEqualTo(text.replaceAll("\\D", ""));
    }

    /**
     * Unicode Standard, code chart Arabic (U+0600): comma U+060C, semicolon U+061B, question mark U+061F; signs between Latin words and
     * in formulas stay.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', ignoreLeadingAndTrailingWhitespace = false, value = {
        "بالحجم (تعريف); مثل 96 mL|بالحجم (تعريف)؛ مثل 96 mL", "خليط, 18 mL; 3 مرشّة, 1|خليط، 18 mL؛ 3 مرشّة، 1",
        "الموصلية, µS/cm|الموصلية، µS/cm", ", الثلث الأسفل|، الثلث الأسفل", "; |؛ ", "1, 2, 3|1، 2، 3", "هل غُسل?|هل غُسل؟",
        "مثل pH 4.6, pH 4.8|مثل pH 4.6، pH 4.8", "STOT SE 3 (airways), H335|STOT SE 3 (airways), H335",
        "ΔE00: \u200eSH = 1, المتوسط|ΔE00: \u200eSH = 1, المتوسط", "1,000 ورقة|1,000 ورقة", "., 2001).|., 2001)."})
    void arabic_has_its_own_comma_semicolon_and_question_mark(String text, String expected) {
        TypeSetting arabic = TypeSetting.in(Words.in("ar"));
        assertThat(arabic.set(text)).isEqualTo(expected);
        assertThat(arabic.set(expected)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"en", "cy", "ar"})
    void a_language_with_a_decimal_point_keeps_its_texts(String language) {
        String text = "Method: 0.5 g; pH 4.4, pH 4.5 ?";
        assertThat(TypeSetting.in(Words.in(language)).set(text)).isEqualTo(text);
    }
}
