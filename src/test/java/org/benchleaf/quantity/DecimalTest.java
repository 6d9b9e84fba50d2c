package org.benchleaf.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Held against {@link BigDecimal} and {@link Double} of the Java library. */
class DecimalTest {

    private static final int TIMES = 20_000;

    private final Random chance = new Random(1);

    @Test
    void every_number_is_rounded_to_significant_digits_as_the_java_library_rounds_it() {
        for (int time = 0; time < TIMES; time++) {
            BigDecimal number = anyNumber();
            int digits = 1 + chance.nextInt(12);
            assertThat(value(Decimal.read(number.toString()).significant(digits))).as("%s to %d digits", number, digits)
                    .isEqualByComparingTo(number.round(new MathContext(digits, RoundingMode.HALF_UP)));
        }
    }

    @Test
    void every_number_is_rounded_to_decimals_and_written_as_the_java_library_does() {
        for (int time = 0; time < TIMES; time++) {
            BigDecimal number = anyNumber();
            int decimals = chance.nextInt(40) - 15;
            BigDecimal rounded = number.setScale(decimals, RoundingMode.HALF_UP);
            Decimal ours = Decimal.read(number.toString()).rounded(decimals);
            assertThat(ours.scale()).isEqualTo(decimals);
            assertThat(ours.plain()).as("%s to %d decimals", number, decimals).isEqualTo(rounded.toPlainString());
            assertThat(ours.isZero()).isEqualTo(rounded.signum() == 0);
            assertThat(ours.isNegative()).isEqualTo(rounded.signum() < 0);
        }
    }

    @Test
    void every_number_has_the_shortest_form_magnitude_and_last_step_that_the_java_library_gives() {
        for (int time = 0; time < TIMES; time++) {
            BigDecimal number = anyNumber();
            BigDecimal stripped = number.stripTrailingZeros();
            Decimal ours = Decimal.read(number.toString());
            assertThat(ours.stripped().scale()).as("%s", number).isEqualTo(stripped.scale());
            assertThat(value(ours.shifted(-3))).isEqualByComparingTo(number.movePointLeft(3));
            assertThat(Decimal.step(number.scale())).isEqualTo(number.ulp().doubleValue());
            if (number.signum() != 0) {
                assertThat(ours.magnitude()).as("%s", number).isEqualTo(number.precision() - number.scale() - 1);
            }
        }
    }

    @Test
    void a_double_comes_back_and_is_written_as_java_writes_it() {
        for (int time = 0; time < TIMES; time++) {
            double number = Double.longBitsToDouble(chance.nextLong());
            assertThat(Decimal.text(number)).isEqualTo(Double.toString(number));
            if (Double.isFinite(number)) {
                assertThat(Decimal.of(number).value()).isEqualTo(number);
                assertThat(value(Decimal.of(number))).isEqualByComparingTo(BigDecimal.valueOf(number));
            }
        }
        for (double number : new double[] {0, 1, -1, 100, 1e6, 1e7, 12_345_678, 0.001, 0.00099, 1e21, 1e-7, Double.MIN_VALUE,
            Double.MAX_VALUE, Double.NaN, Double.NEGATIVE_INFINITY}) {
            assertThat(Decimal.text(number)).isEqualTo(Double.toString(number));
        }
    }

    /** ECMA-262, Number::toString: an exponent without a point, and no point behind a whole number. */
    @Test
    void what_a_browser_writes_is_read_as_what_java_writes() {
        assertThat(Decimal.read("1e-7")).hasToString("1.0E-7");
        assertThat(Decimal.read("1.5e+21")).hasToString("1.5E21");
        assertThat(Decimal.read("5")).hasToString("5.0");
        assertThat(Decimal.read("-0.25")).hasToString("-0.25");
    }

    @Test
    void a_half_goes_away_from_zero_and_a_carry_adds_no_digit() {
        assertThat(Decimal.read("0.125").significant(2).plain()).isEqualTo("0.13");
        assertThat(Decimal.read("-1.25").significant(2).plain()).isEqualTo("-1.3");
        assertThat(Decimal.read("99.95").significant(3).stripped().plain()).isEqualTo("100");
        assertThat(Decimal.of(2.675).rounded(2).plain()).isEqualTo("2.68");
    }

    private BigDecimal anyNumber() {
        return BigDecimal.valueOf(chance.nextLong() >> chance.nextInt(64), chance.nextInt(30) - 10);
    }

    private static BigDecimal value(Decimal number) {
        return new BigDecimal(number.plain());
    }
}
