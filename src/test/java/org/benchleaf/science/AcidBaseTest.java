package org.benchleaf.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the pH of acids, bases and salts against handbook tables and pH standards. */
class AcidBaseTest {

    static Stream<Arguments> rows() throws IOException {
        return Files.readAllLines(Path.of("src/test/resources/check-values/acid-base.csv")).stream()
                .filter(line -> !line.startsWith("#")).map(line -> line.split("\\|"))
                .map(cells -> Arguments.of(cells[0].strip(), Double.parseDouble(cells[1].strip()),
                        Double.parseDouble(cells[2].strip()), cells[3].strip()));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void the_ph_is_the_one_that_the_handbook_has(String what, double expected, double tolerance, String source) {
        List<AcidBase.Dissolved> dissolved = Stream.of(what.split("\\+")).map(AcidBaseTest::dissolved).toList();

        assertThat(AcidBase.ph(dissolved).in(Unit.PH)).as(source).isCloseTo(expected, within(tolerance));
    }

    /** Nothing dissolved leaves the pH of pure water, 7.00 at 25 °C (pKw 13.997, NIST). */
    @Test
    void pure_water_is_neutral() {
        assertThat(AcidBase.ph(List.of()).in(Unit.PH)).isCloseTo(7.0, within(0.01));
    }

    /** Equal amounts of a strong acid and a strong base leave neutral salt water. */
    @Test
    void acid_and_base_cancel() {
        assertThat(AcidBase.ph(List.of(new AcidBase.Dissolved(0.1, 1, List.of(), 0),
                new AcidBase.Dissolved(0.1, -1, List.of(), 0))).in(Unit.PH)).isCloseTo(7.0, within(0.3));
    }

    @Test
    void less_than_nothing_cannot_be_dissolved() {
        assertThatThrownBy(() -> AcidBase.ph(List.of(new AcidBase.Dissolved(-1, 1, List.of(), 0))))
                .isInstanceOf(OutsideRange.class).hasMessageContaining("molality");
    }

    private static AcidBase.Dissolved dissolved(String text) {
        String[] cells = text.split(",", -1);
        List<Double> constants = new ArrayList<>();
        Stream.of(cells[2].strip().split(" ")).filter(one -> !one.isEmpty())
                .forEach(one -> constants.add(Double.parseDouble(one)));
        return new AcidBase.Dissolved(Double.parseDouble(cells[0].strip()), Integer.parseInt(cells[1].strip()),
                constants, Integer.parseInt(cells[3].strip()));
    }
}
