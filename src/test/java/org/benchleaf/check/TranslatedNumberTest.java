package org.benchleaf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which digits of a text are numbers, by hand. */
class TranslatedNumberTest {

    @ParameterizedTest
    @CsvSource({
        "CO2 and H2O2, ''",
        "tray B12 beside 3 sheets of A4, 3",
        "V2.15 of the form, ''",
        "pH7.4 is pH 7.4, 7.4",
        "'0,5 mL y 20mL', 0.5 20",
        "the 2nd bath, 2",
        "±5 °C; −3, 3 5",
        "ñ1, ''",
        "1e3, 1",
    })
    void a_digit_inside_a_word_is_no_number(String text, String numbers) {
        assertThat(TranslationForm.numbers(text)).isEqualTo(numbers.isEmpty() ? Set.of()
                : Stream.of(numbers.split(" ")).collect(Collectors.toSet()));
    }
}
