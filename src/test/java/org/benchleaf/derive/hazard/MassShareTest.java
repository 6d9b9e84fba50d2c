package org.benchleaf.derive.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import org.benchleaf.model.Reference;
import org.benchleaf.read.ReferenceReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MassShareTest {

    private static final Reference REFERENCE = ReferenceReader.shipped();

    /** Whoever compares a share with a limit of 0.1 % or more needs no millionths. Common practice, no source. */
    @ParameterizedTest
    @CsvSource({"0, 0, 0 % by mass", "0, 1.7e-7, less than 0.001 % by mass", "2e-6, 2e-6, less than 0.001 % by mass",
        "0, 0.002, 0 to 0.2 % by mass", "0.1, 0.1, 10 % by mass"})
    void a_share_is_told_with_the_digits_that_a_limit_asks_for(double least, double most, String words) {
        assertThat(new MassShare(least, most).words(REFERENCE)).isEqualTo(words);
    }
}
