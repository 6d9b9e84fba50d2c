package org.benchleaf.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import org.benchleaf.quantity.Amount;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Holds number texts against JCGM 100:2008 (GUM) 7.2.6 for digits, the SI Brochure (9th edition, 2019) 5.4.3 and
 * 5.4.4 for spaces and grouping. The rounded numbers were worked by hand.
 */
class NumberTextTest {

    private static final NumberText NUMBERS = NumberText.in(Words.in("en"));

    private static String shown(Amount amount) {
        return amount.text().replace(Amount.UNIT_SPACE, '_');
    }

    @ParameterizedTest
    @CsvSource({
        // value, uncertainty, text: the uncertainty keeps at most two digits, the value the same place (GUM 7.2.6)
        "100.02147, 0.00079, 100.0215 ± 0.0008_g",
        "10.0576, 0.27, 10.06 ± 0.27_g",
        "7.43, 0.1, 7.4 ± 0.1_g",
        "52.04, 1.26, 52.0 ± 1.3_g",
        "523.4, 56, 520 ± 60_g",
    })
    void a_number_keeps_the_digits_that_its_uncertainty_allows(double value, double half, String text) {
        assertThat(shown(NUMBERS.amount(Quantity.plusMinus(value, half, Unit.GRAM)))).isEqualTo(text);
    }

    /** Seven digits, worked by hand: a finer spread is that of the sum, not of anything at the bench (common practice, no source). */
    @Test
    void a_number_is_told_to_seven_digits_however_small_its_spread() {
        assertThat(shown(NUMBERS.amount(Quantity.plusMinus(100.0214712, 0.0000007, Unit.GRAM)))).isEqualTo("100.0215 ± 0.0001_g");
        assertThat(shown(NUMBERS.amount(Quantity.range(117.3145792436, 117.3145792484, Unit.DECIBEL)))).isEqualTo("117.3146_dB");
        assertThat(shown(NUMBERS.amount(Quantity.range(0.117314579, 0.117314588, Unit.GRAM)))).isEqualTo("0.1173146_g");
    }

    /** A number read to a step keeps the place of its uncertainty also where that stands before the decimal mark (GUM 7.2.6). */
    @ParameterizedTest
    @CsvSource({
        "654, 400, 700_Pa",
        "654, 24, 654_Pa",
        "766, 90, 770_Pa",
        "40, 50, 40_Pa",
        "12, 300, 10_Pa",
    })
    void a_number_is_told_no_finer_than_it_is_known(double value, double half, String text) {
        assertThat(shown(NUMBERS.amount(Quantity.resolved(value, half, Unit.PASCAL)))).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "5.09375, LITRE, 5.09_L",
        "0.41, LITRE, 410_mL",
        "1250, MILLILITRE, 1.25_L",
        "0.05, MILLILITRE, 50_µL",
        "0.0354, GRAM, 35.4_mg",
        "2500, GRAM, 2.5_kg",
        "21.04, CELSIUS, 21_°C",
        "0.4, KILOPASCAL, 400_Pa",
    })
    void a_number_without_uncertainty_keeps_three_digits_in_the_unit_of_its_size(double value, Unit unit, String text) {
        assertThat(shown(NUMBERS.amount(Quantity.of(value, unit)))).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "45, 45, SECOND, 45_s",
        "15, 30, MINUTE, 15–30_min",
        "40, 60, MINUTE, 40–60_min",
        "60, 60, MINUTE, 1_h",
        "90, 90, MINUTE, 90_min",
        "105, 105, MINUTE, 1_h 45_min",
        "150, 150, MINUTE, 2_h 30_min",
        "45, 90, MINUTE, 45–90_min",
        "45, 120, MINUTE, 45_min – 2_h",
        "90, 165, MINUTE, 1_h 30_min – 2_h 45_min",
        "105, 210, MINUTE, 1_h 45_min – 3_h 30_min",
        "1, 2, HOUR, 1–2_h",
        "3, 3, DAY, 3_d",
        "76, 79, HOUR, 3_d 4_h – 3_d 7_h",
        "182, 182, DAY, 26_weeks",
        "183, 183, DAY, 183_d",
        "7, 7, DAY, 7_d",
        "14, 14, DAY, 2_weeks",
    })
    void a_time_is_told_as_a_person_would(double low, double high, Unit unit, String text) {
        assertThat(shown(NUMBERS.duration(Quantity.range(low, high, unit)))).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"9999, 9999", "10000, 10_000", "1234567, 1_234_567", "-3.5, −3.5", "0, 0"})
    void groups_begin_at_ten_thousand_and_minus_is_a_minus(double value, String text) {
        assertThat(NUMBERS.number(value).replace('\u202F', '_')).isEqualTo(text);
    }

    @Test
    void an_instrument_shows_whole_steps_with_its_own_decimals() {
        assertThat(shown(NUMBERS.shownBy(Quantity.of(412.2, Unit.MILLIMETRE), Quantity.of(0.5, Unit.MILLIMETRE))))
                .isEqualTo("412.0_mm");
        assertThat(shown(NUMBERS.shownBy(Quantity.of(104.2, Unit.MILLILITRE), Quantity.of(1, Unit.MILLILITRE))))
                .isEqualTo("104_mL");
    }

    @Test
    void a_ph_and_a_count_stand_without_a_unit() {
        assertThat(NUMBERS.amount(Quantity.of(8.5, Unit.PH)).text()).isEqualTo("8.5");
        assertThat(NUMBERS.amount(Quantity.count(6)).text()).isEqualTo("6");
        assertThat(NUMBERS.amount(Quantity.range(4, 5, Unit.COUNT)).text()).isEqualTo("4–5");
    }

    @Test
    void a_range_of_negative_numbers_is_not_joined_by_a_dash() {
        assertThat(shown(NUMBERS.amount(Quantity.range(-3, -1, Unit.CELSIUS)))).isEqualTo("−3 … −1_°C");
    }

    @Test
    void a_number_as_written_keeps_every_digit() {
        assertThat(shown(NUMBERS.written(Quantity.of(0.1234, Unit.GRAM)))).isEqualTo("0.1234_g");
        assertThat(shown(NUMBERS.written(Quantity.range(15, 30, Unit.MINUTE)))).isEqualTo("15–30_min");
    }

    @Test
    void a_very_small_number_is_a_power_of_ten() {
        assertThat(shown(NUMBERS.amount(Quantity.of(1e-10, Unit.SQUARE_METRE_PER_SECOND)))).isEqualTo("1 × 10⁻¹⁰_m²/s");
    }

    @Test
    void the_space_before_a_unit_in_written_text_becomes_narrow() {
        assertThat(NUMBERS.spaced("40 % v/v in 250 mL, 3 sheets")).isEqualTo("40\u202F% v/v in 250\u202FmL, 3 sheets");
    }

    @Test
    void days_spell_their_month_and_times_follow_the_long_clock() {
        assertThat(NUMBERS.date(LocalDate.of(2026, 3, 17))).isEqualTo("17 March 2026");
        assertThat(NUMBERS.weekday(LocalDate.of(2026, 3, 17))).isEqualTo("Tuesday 17 March 2026");
        assertThat(NUMBERS.clock(LocalTime.of(9, 5))).isEqualTo("09:05");
        assertThat(NUMBERS.iso(Quantity.range(15, 20, Unit.MINUTE))).isEqualTo("PT20M");
    }
}
