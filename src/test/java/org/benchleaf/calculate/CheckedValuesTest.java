package org.benchleaf.calculate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.calculate.CheckedValues.Compared;
import org.benchleaf.model.CheckValue;
import org.benchleaf.model.CheckValues;
import org.benchleaf.read.CheckValueReader;
import org.benchleaf.read.MethodReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Runs every row of every check-value file; the page of methods shows the same rows. */
class CheckedValuesTest {

    private static final String BY_HAND = "worked by hand";
    private static final List<String> STATUSES = List.of("read", "read (weak)", "secondary", "from memory",
            "worked from the published formula", "worked with PHREEQC from the published constants", BY_HAND);
    private static final Calculations CALCULATIONS = new Calculations(MethodReader.read());

    private static List<CheckValues> files() {
        return CheckValueReader.read(CALCULATIONS.formulary());
    }

    static Stream<Arguments> everyRow() {
        return files().stream().flatMap(file -> CheckedValues.of(CALCULATIONS, file).stream())
                .map(row -> Arguments.of(row.value().calculation(), row.value().id(), row));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everyRow")
    void a_calculation_agrees_with_the_value_that_others_published(String calculation, String id, Compared row) {
        CheckValue value = row.value();
        assertThat(row.agrees())
                .as("%s %s: %s should be %s within %s (%s), but is %s", calculation, id, value.output(),
                        value.expected(), value.tolerance(), value.source(), row.obtained())
                .isTrue();
    }

    @Test
    void every_calculation_is_held_against_three_values_from_outside_and_says_how_near() {
        assertThat(files()).allSatisfy(file -> {
            assertThat(file.rows().stream().filter(CheckedValuesTest::isFromOutside).map(CheckValue::source))
                    .as(file.calculation()).hasSizeGreaterThanOrEqualTo(3).allMatch(source -> source.length() > 7);
            assertThat(file.about()).as(file.calculation()).matches(".*(Within|Exact).*");
        });
    }

    @Test
    void every_row_says_how_its_source_was_consulted() {
        assertThat(files()).flatExtracting(CheckValues::rows).extracting(CheckValue::status).isSubsetOf(STATUSES);
    }

    /** A sum that someone here worked out by hand is a check, but not one from outside. */
    private static boolean isFromOutside(CheckValue value) {
        return !value.status().equals(BY_HAND) && !value.source().startsWith(BY_HAND);
    }

    @Test
    void no_row_is_told_twice() {
        assertThat(files()).allSatisfy(file ->
                assertThat(file.rows().stream().map(CheckValue::id)).doesNotHaveDuplicates());
    }

    @Test
    void a_wrong_expectation_would_be_noticed() {
        CheckValues file = files().get(0);
        CheckValue right = file.rows().get(0);
        CheckValue wrong = new CheckValue(right.calculation(), right.id(), right.inputs(), right.output(),
                String.valueOf(Double.parseDouble(right.expected()) + 3 * right.tolerance()), right.tolerance(),
                right.source(), right.status());
        assertThat(CheckedValues.of(CALCULATIONS, new CheckValues(file.calculation(), file.about(), List.of(wrong))))
                .noneMatch(Compared::agrees);
    }
}
