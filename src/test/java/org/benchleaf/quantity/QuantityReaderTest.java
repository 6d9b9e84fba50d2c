package org.benchleaf.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.benchleaf.quantity.QuantityReader.Reading;
import org.benchleaf.quantity.QuantityReader.Slip;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Reads what people write at the bench, and asks back where it may mean several things. */
class QuantityReaderTest {

    @ParameterizedTest
    @CsvSource({
        "1.5 L, VOLUME, LITRE, 1.5, 1.5, 1.5, NONE",
        "500mL, VOLUME, MILLILITRE, 500, 500, 500, NONE",
        "500 ml, VOLUME, MILLILITRE, 500, 500, 500, NONE",
        "40 % v/v, VOLUME_FRACTION, PERCENT_BY_VOLUME, 40, 40, 40, NONE",
        "40% v/v, VOLUME_FRACTION, PERCENT_BY_VOLUME, 40, 40, 40, NONE",
        "40 %v/v, VOLUME_FRACTION, PERCENT_BY_VOLUME, 40, 40, 40, NONE",
        "2 % w/v, MASS_PER_VOLUME, PERCENT_MASS_BY_VOLUME, 2, 2, 2, NONE",
        "15 min to 30 min, TIME, MINUTE, 22.5, 15, 30, RANGE",
        "15 to 30 min, TIME, MINUTE, 22.5, 15, 30, RANGE",
        "15–30 min, TIME, MINUTE, 22.5, 15, 30, RANGE",
        "45 min to 2 h, TIME, HOUR, 1.375, 0.75, 2, RANGE",
        "-5 to 5 °C, TEMPERATURE, CELSIUS, 0, -5, 5, RANGE",
        "7.4 ± 0.1, ACIDITY, PH, 7.4, 7.3, 7.5, TOLERANCE",
        "pH 8.5, ACIDITY, PH, 8.5, 8.5, 8.5, NONE",
        "pH 8 to 9, ACIDITY, PH, 8.5, 8, 9, RANGE",
        "pH 8 to pH 9, ACIDITY, PH, 8.5, 8, 9, RANGE",
        "8.5, ACIDITY, PH, 8.5, 8.5, 8.5, NONE",
        "100 mL ± 0.5 mL, VOLUME, MILLILITRE, 100, 99.5, 100.5, TOLERANCE",
        "1e-10 m²/s, DIFFUSIVITY, SQUARE_METRE_PER_SECOND, 1e-10, 1e-10, 1e-10, NONE",
        "1E-10 m2/s, DIFFUSIVITY, SQUARE_METRE_PER_SECOND, 1e-10, 1e-10, 1e-10, NONE",
        "82 g/m², MASS_PER_AREA, GRAM_PER_SQUARE_METRE, 82, 82, 82, NONE",
        "82 gsm, MASS_PER_AREA, GRAM_PER_SQUARE_METRE, 82, 82, 82, NONE",
        "50 %, HUMIDITY, PERCENT_HUMIDITY, 50, 50, 50, NONE",
        "63 %, SHARE, PERCENT, 63, 63, 63, NONE",
        "3, COUNT, COUNT, 3, 3, 3, NONE",
        "2 /h, RATE, PER_HOUR, 2, 2, 2, NONE",
        "2 1/h, RATE, PER_HOUR, 2, 2, 2, NONE",
        "2 to 4 1/h, RATE, PER_HOUR, 3, 2, 4, RANGE",
        "'  412 mm ', LENGTH, MILLIMETRE, 412, 412, 412, NONE",
    })
    void a_quantity_is_read_as_it_is_written(String text, Dimension wanted, Unit unit, double value, double low,
            double high, Quantity.Spread spread) {
        Reading reading = QuantityReader.read(text, wanted);
        assertThat(reading.slip()).isEmpty();
        Quantity quantity = reading.quantity().orElseThrow();
        assertThat(quantity.unit()).isEqualTo(unit);
        assertThat(quantity.spread()).isEqualTo(spread);
        assertThat(quantity.value()).isCloseTo(value, within(1e-12));
        assertThat(quantity.low()).isCloseTo(low, within(1e-12));
        assertThat(quantity.high()).isCloseTo(high, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "'', VOLUME, EMPTY",
        "'   ', VOLUME, EMPTY",
        "'1,5 L', VOLUME, DECIMAL_COMMA",
        "'1,500 mL', VOLUME, DECIMAL_COMMA",
        "40 %, VOLUME_FRACTION, BARE_PERCENT",
        "40%, MASS_PER_VOLUME, BARE_PERCENT",
        "1:4, NUMBER, COLON_RATIO",
        "1 : 4, MASS, COLON_RATIO",
        "3 drops, VOLUME, HOUSEHOLD_MEASURE",
        "2 tbsp, VOLUME, HOUSEHOLD_MEASURE",
        "a pinch, MASS, HOUSEHOLD_MEASURE",
        "500, VOLUME, NO_UNIT",
        "15 to 30, TIME, NO_UNIT",
        "3 furlongs, LENGTH, UNKNOWN_UNIT",
        "3 ML, VOLUME, UNKNOWN_UNIT",
        "3 g, VOLUME, OTHER_DIMENSION",
        "70 % v/v, MASS_FRACTION, OTHER_DIMENSION",
        "3 mm to 5 g, LENGTH, OTHER_DIMENSION",
        "pH 8, VOLUME, OTHER_DIMENSION",
        "30 to 15 min, TIME, RANGE_BACKWARDS",
        "2 h to 30 min, TIME, RANGE_BACKWARDS",
        "overnight, TIME, NOT_A_NUMBER",
        "NaN mL, VOLUME, NOT_A_NUMBER",
        "7.4 ± -0.1, ACIDITY, NOT_A_NUMBER",
        "1 2 mL, VOLUME, NOT_A_NUMBER",
    })
    void what_may_mean_several_things_is_asked_about(String text, Dimension wanted, Slip slip) {
        Reading reading = QuantityReader.read(text, wanted);
        assertThat(reading.quantity()).isEmpty();
        assertThat(reading.slip()).contains(slip);
        assertThat(reading.offset()).isBetween(0, text.length());
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void every_unit_is_read_back_from_its_own_symbol(Unit unit) {
        Random random = new Random(unit.ordinal());
        for (int k = 0; k < 50; k++) {
            double value = random.nextInt(100_000) / 1000.0;
            String written = unit == Unit.PH ? "pH " + value : (value + " " + unit.symbol().replace("×", "")).strip();
            assertThat(QuantityReader.read(written, unit.dimension()).quantity()).contains(Quantity.of(value, unit));
        }
    }

    @Test
    void without_a_wanted_kind_the_unit_decides_and_a_bare_number_stays_a_number() {
        assertThat(QuantityReader.read("3 g").quantity()).contains(Quantity.of(3, Unit.GRAM));
        assertThat(QuantityReader.read("3").quantity()).contains(Quantity.number(3));
        assertThat(QuantityReader.read("40 %").slip()).contains(Slip.BARE_PERCENT);
    }

    /** Unicode: U+03BC is the Greek letter, U+00B5 the sign for micro. */
    @Test
    void micro_is_read_in_either_letter() {
        Quantity five = Quantity.of(5, Unit.MICROLITRE);
        assertThat(QuantityReader.read("5 \u03bcL").quantity()).contains(five);
        assertThat(QuantityReader.read("5 \u00b5L").quantity()).contains(five);
    }

    @Test
    void a_slip_points_at_the_words_it_stands_in() {
        Reading reading = QuantityReader.read("  12 furlongs", Dimension.LENGTH);
        assertThat(reading.offset()).isEqualTo(5);
        assertThat(reading.found()).isEqualTo("furlongs");
    }

    @Test
    void no_text_whatever_breaks_the_reader() {
        Random random = new Random(20260302);
        String letters = "0123456789.,-+±–%:eE to min mL g/m²°CpHv/xµ\t\u0000∞";
        for (int k = 0; k < 20_000; k++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(14); n > 0; n--) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            Dimension wanted = Dimension.values()[random.nextInt(Dimension.values().length)];
            Reading reading = QuantityReader.read(text.toString(), wanted);
            assertThat(reading.quantity().isPresent()).isNotEqualTo(reading.slip().isPresent());
        }
    }

    /** Each limit, and what lies just beyond it; 1e-320 is below the smallest normal double (IEEE 754), 1e-400 below all. */
    @ParameterizedTest
    @EnumSource(Dimension.class)
    void what_lies_beyond_the_limits_of_its_kind_is_no_quantity(Dimension dimension) {
        String unit = dimension == Dimension.COUNT ? "" : " " + Unit.usual(dimension).symbol();
        String pattern = dimension == Dimension.ACIDITY ? "pH #" : "#" + unit;
        for (double limit : new double[] {dimension.least(), dimension.most(), dimension.lowest(), 0}) {
            assertThat(QuantityReader.read(pattern.replace("#", String.valueOf(limit)), dimension).slip()).as("%s", limit).isEmpty();
        }
        for (String beyond : new String[] {"1e-320", "1e-400", "-1e-320", "1e99", "-1e99",
            String.valueOf(dimension.least() / 1.01), String.valueOf(dimension.most() * 1.01)}) {
            assertThat(QuantityReader.read(pattern.replace("#", beyond), dimension).slip()).as(beyond)
                    .contains(Slip.BEYOND_LIMITS);
        }
    }

    /** Absolute zero is -273.15 °C: SI Brochure, 9th edition, 2.3.1. */
    @ParameterizedTest
    @CsvSource({"-400 °C", "-273.16 °C", "-300 °C to 20 °C"})
    void nothing_is_colder_than_absolute_zero(String text) {
        assertThat(QuantityReader.read(text, Dimension.TEMPERATURE).slip()).contains(Slip.BEYOND_LIMITS);
        assertThat(QuantityReader.read("-273.15 °C", Dimension.TEMPERATURE).slip()).isEmpty();
        assertThat(QuantityReader.read("-25 °C", Dimension.TEMPERATURE).slip()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1 to 1e90 mL", "1e-90 to 1 mL", "1e-90 ± 1 mL", "0.0000000001 mL", "1e95 mL ± 1 mL"})
    void each_number_that_is_written_has_its_limits(String text) {
        assertThat(QuantityReader.read(text, Dimension.VOLUME).slip()).contains(Slip.BEYOND_LIMITS);
        assertThat(QuantityReader.read(text).slip()).contains(Slip.BEYOND_LIMITS);
    }

    @Test
    void a_tolerance_that_reaches_nothing_is_read() {
        assertThat(QuantityReader.read("0.3 ± 0.3 mL", Dimension.VOLUME).slip()).isEmpty();
    }

    @Test
    void a_number_too_large_to_hold_is_not_a_quantity() {
        assertThat(QuantityReader.read("1e999 mL", Dimension.VOLUME).slip()).contains(Slip.NOT_A_NUMBER);
        assertThat(QuantityReader.read("1e999 ± 1 mL", Dimension.VOLUME).slip()).contains(Slip.NOT_A_NUMBER);
        assertThat(QuantityReader.read("1 to 1e999 mL", Dimension.VOLUME).slip()).contains(Slip.NOT_A_NUMBER);
    }

    /** Half a step on either side is a rectangular distribution, u = 0.29 step: JCGM 100:2008 (GUM), F.2.2.1; here k = 2. */
    @ParameterizedTest
    @CsvSource({"412 mm, 1", "412.0 mm, 0.1", "0.11 mm, 0.01", "4.10 kg, 0.01", "1.2e3 g, 100", "60 m³, 1"})
    void a_reading_is_known_to_its_last_digit(String text, double step) {
        Quantity reading = QuantityReader.asReading(QuantityReader.read(text).quantity().orElseThrow(), text);
        assertThat(reading.spread()).isEqualTo(Quantity.Spread.RESOLUTION);
        assertThat(reading.halfWidth()).isCloseTo(2 * 0.2887 * step, within(0.001 * step));
    }

    @ParameterizedTest
    @ValueSource(strings = {"12 to 14 mm", "7.4 ± 0.1 mm"})
    void a_reading_that_says_how_far_it_lies_off_keeps_that(String text) {
        Quantity written = QuantityReader.read(text).quantity().orElseThrow();
        assertThat(QuantityReader.asReading(written, text)).isEqualTo(written);
    }

    @Test
    void a_count_is_exact() {
        assertThat(QuantityReader.asReading(Quantity.count(3), "3")).isEqualTo(Quantity.count(3));
        assertThat(Quantity.count(3).asRead()).isEqualTo(Quantity.count(3));
    }
}
