package org.benchleaf.compose.chart;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
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

    /**
     * The worked example of colour-science (colour.readthedocs.io, XYZ_to_Lab and XYZ_to_sRGB, read): X, Y, Z of
     * 0.20654008, 0.12197225, 0.05136952 is L* 41.5279, a* 52.6386, b* 26.9232 and, on a screen, 0.7057393, 0.1924826,
     * 0.2235416, which times 255 is 179.96, 49.08, 57.00.
     */
    @Test
    void a_published_example_comes_out_to_the_level() {
        assertThat(ScreenColour.of(41.52787529, 52.63858304, 26.92317922)).isEqualTo("#b43139");
    }

    /** A colour that no screen can show is cut to what it can, each level for itself. */
    @Test
    void a_colour_beyond_the_screen_is_cut_to_it() {
        assertThat(ScreenColour.of(50, -200, 0)).startsWith("#00");
    }
}
