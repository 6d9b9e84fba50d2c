package org.benchleaf.calculate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.model.CheckValue;
import org.benchleaf.model.CheckValues;
import org.benchleaf.model.Method;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.CheckValueReader;
import org.benchleaf.read.MethodReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What every calculation must do when one number grows, and that it does not matter in which unit a number is put in. */
class DirectionsTest {

    private static final int STEPS = 40;
    private static final double NEARLY = 1e-9;
    private static final Calculations CALCULATIONS = new Calculations(MethodReader.read());

    @ParameterizedTest(name = "{0}: {4} {5} when {1} grows")
    @CsvFileSource(resources = "/laws/directions.csv", numLinesToSkip = 2)
    void an_output_goes_the_way_that_physics_sends_it(String calculation, String inputs, double from, double to,
            String output, String law) {
        List<Double> grown = new ArrayList<>();
        List<Double> outputs = new ArrayList<>();
        boolean counted = from == Math.rint(from) && inputs.matches(".*(baths|changes|faces)=#.*");
        double step = counted ? 1 : (to - from) / STEPS;
        for (double number = from; number <= to + step / 1000; number += step) {
            double reached = Math.min(number, to);
            grown.add(reached);
            outputs.add(value(calculation, inputs.replace("#", Written.number(reached)), output));
        }
        assertThat(outputs).hasSizeGreaterThan(2);
        for (int k = 1; k < outputs.size(); k++) {
            assertLaw(law, grown.get(0), outputs.get(0), grown.get(k), outputs.get(k), outputs.get(k - 1));
        }
    }

    private static void assertLaw(String law, double first, double atFirst, double now, double atNow, double before) {
        double times = now / first;
        double nearly = NEARLY * Math.max(1, Math.abs(atNow));
        switch (law) {
            case "rises" -> assertThat(atNow).isGreaterThan(before);
            case "falls" -> assertThat(atNow).isLessThan(before);
            case "never falls" -> assertThat(atNow).isGreaterThanOrEqualTo(before);
            case "never rises" -> assertThat(atNow).isLessThanOrEqualTo(before);
            case "in proportion" -> assertThat(atNow).isCloseTo(atFirst * times, within(nearly)).isGreaterThan(before);
            case "in inverse proportion" -> assertThat(atNow).isCloseTo(atFirst / times, within(nearly)).isLessThan(before);
            case "as the square" -> assertThat(atNow).isCloseTo(atFirst * times * times, within(nearly))
                    .isGreaterThan(before);
            case "unchanged" -> assertThat(atNow).isCloseTo(atFirst, within(nearly));
            default -> throw new IllegalArgumentException("no law is called " + law);
        }
    }

    @Test
    void every_calculation_has_a_law() throws IOException {
        try (InputStream laws = DirectionsTest.class.getResourceAsStream("/laws/directions.csv")) {
            Set<String> lawful = new String(laws.readAllBytes(), StandardCharsets.UTF_8).lines().skip(2)
                    .map(line -> line.substring(0, line.indexOf(','))).collect(Collectors.toSet());
            assertThat(CALCULATIONS.formulary().methods()).extracting(Method::name)
                    .containsExactlyInAnyOrderElementsOf(lawful);
        }
    }

    static Stream<CheckValue> oneOfEach() {
        return CheckValueReader.read(CALCULATIONS.formulary()).stream().map(CheckValues::rows).map(rows -> rows.get(0));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("oneOfEach")
    void it_does_not_matter_in_which_unit_a_number_is_put_in(CheckValue row) {
        Map<String, Quantity> plain = numbers(row.calculation(), row.inputs());
        Method method = CALCULATIONS.formulary().method(row.calculation()).orElseThrow();
        for (Method.Input input : method.inputs()) {
            String text = row.inputs().get(input.key());
            if (text == null || input.many() || input.dimensions().isEmpty()) {
                continue;
            }
            Quantity given = new InputReading(input).read(text, Calculations.GIVEN).values().get(0);
            for (Unit unit : Unit.values()) {
                if (unit.dimension() == given.dimension()) {
                    Map<String, String> changed = new LinkedHashMap<>(row.inputs());
                    changed.put(input.key(), Written.of(given.to(unit)));
                    assertSame(plain, numbers(row.calculation(), changed), input.key() + " in " + unit);
                }
            }
        }
    }

    private static void assertSame(Map<String, Quantity> plain, Map<String, Quantity> changed, String what) {
        assertThat(changed.keySet()).as(what).isEqualTo(plain.keySet());
        plain.forEach((key, quantity) -> assertThat(changed.get(key).in(quantity.unit())).as("%s, %s", key, what)
                .isCloseTo(quantity.value(), within(NEARLY * Math.max(1e-6, Math.abs(quantity.value())))));
    }

    private static double value(String calculation, String inputs, String output) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String pair : inputs.split("; ")) {
            texts.put(pair.substring(0, pair.indexOf('=')), pair.substring(pair.indexOf('=') + 1));
        }
        Map<String, Quantity> numbers = numbers(calculation, texts);
        assertThat(numbers).as(inputs).containsKey(output);
        return numbers.get(output).value();
    }

    private static Map<String, Quantity> numbers(String calculation, Map<String, String> texts) {
        Outcome outcome = CALCULATIONS.work(calculation, texts);
        assertThat(outcome).as("%s %s: %s", calculation, texts, outcome).isInstanceOf(Outcome.Worked.class);
        return ((Outcome.Worked) outcome).numbers();
    }
}
