package org.benchleaf.compose.part;

import static org.assertj.core.api.Assertions.assertThat;

import org.benchleaf.text.Inline;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The way to the text of a licence. */
class LicencesTest {

    /** The addresses stand on the deeds of Creative Commons and in the SPDX list (from memory). */
    @ParameterizedTest
    @CsvSource({
        "CC-BY-4.0, https://creativecommons.org/licenses/by/4.0/",
        "CC-BY-NC-SA-3.0, https://creativecommons.org/licenses/by-nc-sa/3.0/",
        "CC0-1.0, https://creativecommons.org/publicdomain/zero/1.0/",
        "OGL-UK-3.0, https://spdx.org/licenses/OGL-UK-3.0.html"})
    void a_licence_leads_to_its_text(String licence, String address) {
        assertThat(Licences.linked(licence)).isEqualTo(Inline.Hyperlink.to(address, licence));
    }

    @ParameterizedTest
    @ValueSource(strings = {"all rights reserved", "LicenseRef-studio", "not known"})
    void what_is_no_identifier_of_the_list_leads_nowhere(String licence) {
        assertThat(Licences.linked(licence)).isEqualTo(new Inline.Text(licence));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "fr", "cy", "ar"})
    void the_foot_of_a_page_says_the_same_with_the_link_as_without(String language) {
        Words words = Words.in(language);
        for (String key : new String[] {"frame.licence", "frame.licence-site"}) {
            RichText text = words.around(key, "licence", Licences.linked("CC-BY-4.0"));
            assertThat(text.plain()).isEqualTo(words.say(key, "licence", "CC-BY-4.0"));
            assertThat(text.parts()).contains(Licences.linked("CC-BY-4.0"));
        }
    }
}
