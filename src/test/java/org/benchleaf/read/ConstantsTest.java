package org.benchleaf.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.benchleaf.model.Constant;
import org.benchleaf.model.Formulary;
import org.benchleaf.quantity.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds the numbers that cases do not state against what others published. */
class ConstantsTest {

    private static final Formulary FORMULARY = MethodReader.read();

    @ParameterizedTest
    @CsvSource({
        // Sugarman and Vitale (1992), JAIC 31(2): 43 ± 9 % wet through, 63 ± 3 % where distortion begins, 81 ± 5 % damp.
        "wet-solids, 34, 43, 52",
        "restraint-solids, 60, 63, 66",
        "damp-solids, 76, 81, 86",
        // ISO 9706: an alkali reserve of at least 2 % calcium carbonate.
        "reserve-of-permanent-paper, 2, 2, 2",
        // OIML R 22: % v/v is meant at 20 °C.
        "volumes-meant-at, 20, 20, 20",
    })
    void a_constant_has_the_value_and_the_ends_that_others_published(String name, double low, double value, double high) {
        Quantity found = FORMULARY.constant(name).value();
        assertThat(found.low()).isCloseTo(low, within(1e-9));
        assertThat(found.value()).isCloseTo(value, within(1e-9));
        assertThat(found.high()).isCloseTo(high, within(1e-9));
    }

    @Test
    void every_constant_names_what_it_is_and_where_it_comes_from() {
        assertThat(FORMULARY.constants()).isNotEmpty().allSatisfy(constant -> {
            assertThat(constant.about()).isNotBlank();
            assertThat(constant.sources()).isNotEmpty();
        });
        assertThat(FORMULARY.constants()).extracting(Constant::name).doesNotHaveDuplicates();
    }
}
