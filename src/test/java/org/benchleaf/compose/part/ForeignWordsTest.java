package org.benchleaf.compose.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import org.benchleaf.model.Phrases;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What stays in another language carries it (WCAG 2.2, 3.1.1 and 3.1.2), and a quantity keeps its order in a line from right to left
 * (Unicode Standard Annex 9; the spellings of quantities are those of the SI Brochure, 9th edition, 5.4.3).
 */
class ForeignWordsTest {

    private static Document marked(String language, String page, String original) {
        return Jsoup.parse(new ForeignWords(language, "en", Phrases.ENGLISH)
                .marked("<html lang=\"" + language + "\"><body>" + page + "</body></html>",
                ForeignWords.Original.of(PageTree.of("<html lang=\"en\"><body>" + original + "</body></html>"))).html());
    }

    @Test
    void a_text_that_was_not_translated_carries_the_language_of_the_original() {
        Document page = marked("fr", "<p>Lower the sheet.</p><p>Sortez la feuille.</p>", "<p>Lower the sheet.</p><p>Lift the sheet.</p>");
        assertThat(page.select("p").eachAttr("lang")).containsExactly("en");
        assertThat(page.select("[lang=en]").text()).isEqualTo("Lower the sheet.");
    }

    @Test
    void a_cell_of_a_line_from_right_to_left_stays_in_its_row_and_its_words_are_turned() {
        Document page = marked("ar", "<table><tr><td>bleeds</td></tr></table><p>Lower the sheet.</p>",
                "<table><tr><td>bleeds</td></tr></table><p>Lower the sheet.</p>");
        assertThat(page.select("td[dir], td[lang]")).isEmpty();
        assertThat(page.select("td > span[lang=en][dir=ltr]").eachText()).containsExactly("bleeds");
        assertThat(page.select("p").attr("dir")).isEqualTo("ltr");
    }

    @Test
    void words_of_the_original_inside_a_translated_sentence_are_marked_and_no_blank_is_lost() {
        Document page = marked("fr", "<p>Ici : Saturated limewater, à préparer.</p>", "<p>Here: Saturated limewater, to make.</p>");
        assertThat(page.select("[lang=en]").eachText()).containsExactly("Saturated limewater");
        assertThat(page.text()).isEqualTo("Ici\u202f: Saturated limewater, à préparer.");
    }

    @ParameterizedTest
    @CsvSource({"412 mm × 298 mm", "H319", "CC-BY-4.0", "3 d 8 h – 3 d 11 h", "pH 8.5"})
    void a_number_a_unit_and_a_code_are_of_no_language(String text) {
        assertThat(marked("fr", "<p>" + text + "</p>", "<p>" + text + "</p>").select("[lang=en]")).isEmpty();
    }

    @Test
    void a_picture_with_the_alternative_text_of_the_original_carries_its_language() {
        String picture = "<img src=\"a.jpg\" alt=\"A brown sheet.\">";
        assertThat(marked("cy", picture, picture).select("img").attr("lang")).isEqualTo("en");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "حجم 412 mm × 298 mm هنا | 412 mm × 298 mm",
        "مدة 15 min هنا | 15 min",
        "مدة 3 d 6 h – 3 d 8 h هنا | 3 d 6 h – 3 d 8 h",
        "قيمة 7.4 ± 0.1 هنا | 7.4 ± 0.1",
        "مزيج 40 % v/v هنا | 40 % v/v",
        "بلغ و300 mm بعدها | 300 mm"})
    void a_quantity_is_set_apart_in_a_line_from_right_to_left(String text, String quantity) {
        Document page = marked("ar", "<p>" + text + "</p>", "<p>Another text.</p>");
        assertThat(page.select("bdi[dir=ltr]").eachText()).containsExactly(quantity);
        assertThat(page.text()).isEqualTo(text);
    }

    /**
     * Unicode Standard Annex 9, W2: behind an Arabic letter a European number becomes an Arabic one, and "45 min" would be shown with the
     * unit on the left of the number; the range itself is read from the right: number, word, number, unit.
     */
    @Test
    void a_range_in_words_runs_from_the_right_with_its_quantity_set_apart() {
        Document page = marked("ar", "<p><bdi>30 إلى 45 min</bdi>, <bdi>412 mm × 298 mm</bdi></p>", "<p>Another text.</p>");
        assertThat(page.select("p > bdi").eachAttr("dir")).isEmpty();
        assertThat(page.select("p > bdi > bdi[dir=ltr]").eachText()).containsExactly("45 min");
        assertThat(page.selectFirst("p > bdi").ownText()).isEqualTo("30 إلى");
    }

    @Test
    void a_degree_keeps_its_letter_before_words_of_the_original() {
        Document page = marked("ar", "<p>0 إلى 40 °C (Tanaka et al. (2001))</p>", "<p>0 to 40 °C (Tanaka et al. (2001))</p>");
        assertThat(page.select("[lang=en]").eachText().toString()).startsWith("[Tanaka et al").doesNotContain("C (");
    }

    /** The space before a colon and the comma in a number: see the source of {@link org.benchleaf.words.TypeSetting}. */
    @Test
    void what_is_read_out_and_the_numbers_of_a_formula_are_set_as_the_language_writes_them() {
        Document page = marked("fr", "<div aria-label=\"Formule: 2.5 mL\"><math><mn>0.3</mn><mi>E</mi></math></div>", "<p>Five.</p>");
        assertThat(page.select("div").attr("aria-label")).isEqualTo("Formule\u202f: 2,5 mL");
        assertThat(page.select("mn").text()).isEqualTo("0,3");
        Document original = marked("fr", "<p lang=\"en\" title=\"pH: 2.5\">It is 2.5.</p>", "<p>Five.</p>");
        assertThat(original.select("p").attr("title")).isEqualTo("pH: 2.5");
    }

    @Test
    void a_word_that_both_languages_have_is_not_marked_in_a_numbered_list() {
        Phrases phrases = new Phrases("fr", Map.of("scalpel", "scalpel"), Map.of(), Set.of());
        String page = "<html lang=\"%s\"><body><li>12. Scalpel</li></body></html>";
        assertThat(Jsoup.parse(new ForeignWords("fr", "en", phrases)
                .marked(page.formatted("fr"), ForeignWords.Original.of(PageTree.of(page.formatted("en")))).html())
                .select("[lang=en]")).isEmpty();
        assertThat(marked("fr", "<li>12. Scalpel</li>", "<li>12. Scalpel</li>").select("[lang=en]").text()).isEqualTo("12. Scalpel");
    }

    @Test
    void a_bare_number_and_a_line_from_left_to_right_need_no_setting_apart() {
        assertThat(marked("ar", "<p>خمس 5 مرات</p>", "<p>Five.</p>").select("bdi")).isEmpty();
        assertThat(marked("fr", "<p>dure 15 min ici</p>", "<p>Five.</p>").select("bdi")).isEmpty();
    }
}
