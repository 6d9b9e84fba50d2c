package org.benchleaf.science;

import static org.assertj.core.api.Assertions.assertThat;

import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds what a hand weighs against roundings done by hand. */
class HandWeighingTest {

    @ParameterizedTest
    @CsvSource({"0.809, 1", "1, 1", "1.01, 2", "2.1, 5", "5.5, 10", "0.04, 0.05", "37, 50"})
    void an_excess_is_rounded_up_to_one_two_or_five(double amount, double weighed) {
        assertThat(Measuring.excess(Quantity.of(amount, Unit.GRAM)).in(Unit.GRAM)).isEqualTo(weighed);
    }

    @ParameterizedTest
    @CsvSource({"16.67, 0.01, 16.7", "83.33, 0.01, 83.3", "1.5, 0.01, 1.5", "0.816, 0.01, 0.82", "1234, 1, 1230", "0.25, 0.1, 0.3"})
    void nothing_is_weighed_finer_than_the_balance_or_the_third_digit(double amount, double step, double weighed) {
        Quantity wanted = Quantity.of(amount, Unit.GRAM);
        assertThat(Measuring.shown(wanted, Measuring.handStep(wanted, Quantity.of(step, Unit.GRAM))).in(Unit.GRAM))
                .isEqualTo(weighed);
    }

    @ParameterizedTest
    @CsvSource({"1.4, 0.16, 11.43", "100, 0.8, 0.8"})
    void an_uncertainty_is_told_as_a_share_of_the_amount(double amount, double within, double share) {
        assertThat(Measuring.relative(Quantity.of(amount, Unit.MILLILITRE), Quantity.of(within, Unit.MILLILITRE))
                .in(Unit.PERCENT)).isCloseTo(share, org.assertj.core.api.Assertions.within(0.01));
    }
}
