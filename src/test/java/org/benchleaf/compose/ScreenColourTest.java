package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** CIELAB of the sRGB primaries, D65/2°: Lindbloom, brucelindbloom.com, CIE color calculator (from memory). */
class ScreenColourTest {

    @ParameterizedTest
    @CsvSource({
        "53.2408, 80.0925, 67.2032, #ff0000",
        "87.7347, -86.1827, 83.1793, #00ff00",
        "32.2970, 79.1875, -107.8602, #0000ff",
        "100, 0, 0, #ffffff",
        "0, 0, 0, #000000",
        "53.5850, 0, 0, #808080",
    })
    void the_primaries_of_a_screen_come_back_from_their_coordinates(double lightness, double a, double b, String hex) {
        assertThat(ScreenColour.of(lightness, a, b)).isEqualTo(hex);
    }
}
