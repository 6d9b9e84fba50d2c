package org.benchleaf.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SignificantDigitsTest {

    /** Held against {@link BigDecimal#round} of the Java library. */
    @Test
    void every_number_is_rounded_as_the_java_library_rounds_it() {
        Random chance = new Random(1);
        for (int time = 0; time < 20_000; time++) {
            BigDecimal number = BigDecimal.valueOf(chance.nextLong() >> chance.nextInt(63), chance.nextInt(30) - 10);
            int digits = 1 + chance.nextInt(12);
            assertThat(SignificantDigits.of(number, digits)).as("%s to %d digits", number, digits)
                    .isEqualByComparingTo(number.round(new MathContext(digits, RoundingMode.HALF_UP)));
        }
    }

    @Test
    void a_half_goes_away_from_zero_and_a_carry_adds_no_digit() {
        assertThat(SignificantDigits.of(new BigDecimal("0.125"), 2)).isEqualByComparingTo("0.13");
        assertThat(SignificantDigits.of(new BigDecimal("-1.25"), 2)).isEqualByComparingTo("-1.3");
        assertThat(SignificantDigits.of(new BigDecimal("99.95"), 3)).isEqualByComparingTo("100");
    }
}
