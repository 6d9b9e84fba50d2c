package org.benchleaf.calculate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Quantity.Spread;
import org.benchleaf.quantity.Unit;
import org.junit.jupiter.api.Test;

/** How spread in what is put in shows in what comes out. */
class PropagationTest {

    /** c = 1000 m P / V, in mg/L for m in mg and V in mL. */
    private static final Function<Args, Answers> STANDARD_SOLUTION = args -> new Answers().number("c",
            Quantity.number(1000 * args.one("m").value() * args.one("p").value() / args.one("v").value()));

    @Test
    void the_worked_example_of_the_eurachem_guide_comes_out_as_printed() {
        // EURACHEM/CITAC (2012), example A1: m 100.28 ± 0.05, P 0.9999 ± 0.000058, V 100.0 ± 0.07 (standard
        // uncertainties) give 1002.7 mg/L with u = 0.9 mg/L. Any one coverage factor goes through unchanged.
        Quantity c = through(STANDARD_SOLUTION, Map.of("m", plusMinus(100.28, 0.05), "p", plusMinus(0.9999, 0.000058),
                "v", plusMinus(100.0, 0.07)), "c");
        assertThat(c.value()).isCloseTo(1002.7, within(0.05));
        assertThat(c.halfWidth()).isCloseTo(0.9, within(0.05));
        assertThat(c.spread()).isEqualTo(Spread.TOLERANCE);
    }

    @Test
    void tolerances_agree_with_a_great_many_drawn_values() {
        Random random = new Random(1952);
        List<Double> results = new ArrayList<>();
        for (int k = 0; k < 20_000; k++) {
            Args args = args(Map.of("m", Quantity.number(100.28 + 0.5 * random.nextGaussian()),
                    "p", Quantity.number(0.9999), "v", Quantity.number(100 + 0.7 * random.nextGaussian())));
            results.add(STANDARD_SOLUTION.apply(args).numbers().get("c").value());
        }
        double deviation = new StandardDeviation().evaluate(results.stream().mapToDouble(each -> each).toArray());
        Quantity c = through(STANDARD_SOLUTION, Map.of("m", plusMinus(100.28, 0.5), "p", Quantity.number(0.9999),
                "v", plusMinus(100.0, 0.7)), "c");
        assertThat(c.halfWidth()).isCloseTo(deviation, within(0.03 * deviation));
    }

    @Test
    void exact_inputs_give_an_exact_result() {
        assertThat(through(STANDARD_SOLUTION, Map.of("m", Quantity.number(1), "p", Quantity.number(1),
                "v", Quantity.number(1)), "c").spread()).isEqualTo(Spread.NONE);
    }

    /** IEEE 754: a double has 53 binary digits, so 100 has neighbours at 1.4 · 10⁻¹⁴; what moves it by less moves nothing. */
    @Test
    void what_only_the_last_places_of_doubles_leave_is_no_uncertainty() {
        Function<Args, Answers> sum = args -> new Answers().number("s",
                Quantity.number(args.one("a").value() + 1e-14 * args.one("b").value()));
        assertThat(through(sum, Map.of("a", Quantity.number(100), "b", plusMinus(5, 2)), "s").spread()).isEqualTo(Spread.NONE);
        assertThat(through(sum, Map.of("a", Quantity.number(100), "b", Quantity.range(1, 9, Unit.NONE)), "s").spread())
                .isEqualTo(Spread.NONE);
        assertThat(through(sum, Map.of("a", Quantity.range(100, 100.000001, Unit.NONE), "b", Quantity.number(5)), "s").spread())
                .isEqualTo(Spread.RANGE);
        assertThat(through(sum, Map.of("a", plusMinus(100, 1e-9), "b", Quantity.number(5)), "s").spread()).isEqualTo(Spread.TOLERANCE);
    }

    @Test
    void a_result_of_readings_alone_is_known_to_their_last_digits() {
        // By hand, JCGM 100:2008 (GUM), F.2.2.1 and 5.1.2: u = 0.29 for a step of 1; of a sum √2 times as much, k = 2.
        Function<Args, Answers> sum = args -> new Answers().number("s",
                Quantity.number(args.one("a").value() + args.one("b").value()));
        Quantity read = Quantity.reading(412, 1, Unit.NONE);
        Quantity s = through(sum, Map.of("a", read, "b", read), "s");
        assertThat(s.spread()).isEqualTo(Spread.RESOLUTION);
        assertThat(s.halfWidth()).isCloseTo(2 * 0.29 * Math.sqrt(2), within(0.01));
        assertThat(through(sum, Map.of("a", read, "b", plusMinus(1, 0.5)), "s").spread()).isEqualTo(Spread.TOLERANCE);
    }

    @Test
    void a_range_that_a_result_does_not_depend_on_leaves_it_no_range() {
        Function<Args, Answers> first = args -> new Answers().number("s", Quantity.number(args.one("a").value()));
        Quantity s = through(first, Map.of("a", Quantity.number(3), "b", Quantity.range(1, 2, Unit.NONE)), "s");
        assertThat(s.spread()).isEqualTo(Spread.NONE);
    }

    @Test
    void ranges_give_the_outermost_results_of_their_ends() {
        Quantity c = through(STANDARD_SOLUTION, Map.of("m", Quantity.range(1, 2, Unit.NONE), "p", Quantity.number(1),
                "v", Quantity.range(4, 5, Unit.NONE)), "c");
        // Worked by hand: 1000 · 1 / 5 and 1000 · 2 / 4; the middle is 1000 · 1.5 / 4.5.
        assertThat(c.low()).isCloseTo(200, within(1e-9));
        assertThat(c.high()).isCloseTo(500, within(1e-9));
        assertThat(c.value()).isCloseTo(333.333, within(0.001));
        assertThat(c.spread()).isEqualTo(Spread.RANGE);
    }

    @Test
    void a_range_and_a_tolerance_together_widen_the_range() {
        Function<Args, Answers> sum = args -> new Answers().number("s",
                Quantity.number(args.one("a").value() + args.one("b").value()));
        Quantity s = through(sum, Map.of("a", Quantity.range(1, 3, Unit.NONE), "b", plusMinus(10, 0.5)), "s");
        assertThat(s.low()).isCloseTo(10.5, within(1e-9));
        assertThat(s.high()).isCloseTo(13.5, within(1e-9));
        assertThat(s.spread()).isEqualTo(Spread.RANGE);
    }

    @Test
    void a_great_many_ranges_are_moved_one_at_a_time_and_added() {
        Function<Args, Answers> sum = args -> new Answers().number("s",
                Quantity.number(args.list("all").stream().mapToDouble(Quantity::value).sum()));
        List<Quantity> all = new ArrayList<>();
        for (int k = 0; k < 30; k++) {
            all.add(Quantity.range(1, 2, Unit.NONE));
        }
        Quantity s = Propagation.through(sum, new Args(Map.of("all", all), Map.of())).numbers().get("s");
        assertThat(s.low()).isCloseTo(30, within(1e-9));
        assertThat(s.high()).isCloseTo(60, within(1e-9));
    }

    @Test
    void a_count_takes_its_outermost_results_and_not_a_share_of_one() {
        Function<Args, Answers> pieces = args -> new Answers().number("n",
                Quantity.of(Math.ceil(args.one("l").value()), Unit.COUNT));
        Quantity n = through(pieces, Map.of("l", plusMinus(3.0, 0.1)), "n");
        assertThat(List.of(n.low(), n.value(), n.high())).containsExactly(3.0, 3.0, 4.0);
    }

    @Test
    void a_word_that_differs_within_the_spread_is_undecided() {
        Function<Args, Answers> threshold = args -> new Answers().word("w", args.one("x").value() >= 2 ? "yes" : "no");
        assertThat(word(threshold, plusMinus(2.05, 0.1))).isEqualTo("undecided");
        assertThat(word(threshold, plusMinus(2.2, 0.1))).isEqualTo("yes");
        assertThat(word(threshold, Quantity.range(1, 1.9, Unit.NONE))).isEqualTo("no");
    }

    @Test
    void a_tolerance_that_the_formula_states_itself_is_one_more_share() {
        Function<Args, Answers> fit = args -> new Answers().number("r", plusMinus(args.one("x").value(), 3));
        assertThat(through(fit, Map.of("x", plusMinus(75, 4)), "r").halfWidth()).isCloseTo(5, within(1e-9));
    }

    private static String word(Function<Args, Answers> calculation, Quantity x) {
        return Propagation.through(calculation, args(Map.of("x", x))).words().get("w");
    }

    private static Quantity through(Function<Args, Answers> calculation, Map<String, Quantity> inputs, String output) {
        return Propagation.through(calculation, args(inputs)).numbers().get(output);
    }

    private static Args args(Map<String, Quantity> inputs) {
        Map<String, List<Quantity>> values = new LinkedHashMap<>();
        inputs.forEach((key, quantity) -> values.put(key, List.of(quantity)));
        return new Args(values, Map.of());
    }

    private static Quantity plusMinus(double value, double half) {
        return Quantity.plusMinus(value, half, Unit.NONE);
    }
}
