package org.benchleaf.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.benchleaf.quantity.Amount;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a number stands before its unit, by hand; {@code ~} is the unbreakable space (SI brochure, 5.4.3). */
class UnitSpacesTest {

    @ParameterizedTest
    @CsvSource({
        "500 mL, 500~mL",
        "0.5 mL to 1.25 L, 0.5~mL to 1.25~L",
        "−5 °C and 5–10 min, −5~°C and 5–10~min",
        "1e-10 m²/s, 1e-10~m²/s",
        "(20 s), (20~s)",
        "tray B2 h, tray B2 h",
        "CO2 g, CO2 g",
        "form V2.5 m, form V2.5 m",
        "20 minutes, 20 minutes",
        // Arabic writes "and", "by" and "for" as one letter on the word behind, also on digits; from memory.
        "بعد 20 min و120 min بماء, بعد 20~min و120~min بماء",
    })
    void a_unit_is_set_to_a_number_and_not_to_a_digit_inside_a_word(String text, String expected) {
        assertThat(UnitSpaces.in(text).replace(Amount.UNIT_SPACE, '~')).isEqualTo(expected);
    }
}
