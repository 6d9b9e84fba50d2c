package org.benchleaf.browser;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.model.CheckValue;
import org.benchleaf.model.CheckValues;
import org.benchleaf.model.Formulary;
import org.benchleaf.model.Method;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;
import org.benchleaf.quantity.Unit;

/** Sums to be worked in two places: those of the published values, and others made by chance within and beside the ranges. */
final class SumRequests {

    private static final List<String> MALFORMED = List.of("", "1,5 mL", "40 %", "1:4", "3 drops", "15 to 5 min", "7 furlongs", "x");

    private final Random chance;

    /** One sum: the calculation and a line for each input, its key and text parted by a tab. */
    record Request(String calculation, String inputs) {
    }

    SumRequests(long seed) {
        chance = new Random(seed);
    }

    /** The inputs of a published value. */
    static Stream<Request> published(List<CheckValues> files) {
        return files.stream().flatMap(file -> file.rows().stream()).map(SumRequests::of);
    }

    /** Sums that once ended otherwise in the page: a half between two tenths, and ends that lie as near as doubles blur. */
    static Stream<Request> blurred() {
        return Stream.of(new Request("colour-values", "xyz\t40, 100, 110\nwhite\tD65/2"),
                new Request("sound-sum", "levels\t118 dB, 40.6 dB\ntimes\t0.8540, 5.8 to 5.8515"),
                new Request("sound-sum", "levels\t88.613 dB, 6.1814 dB\ntimes\t18.65, 0.20 to 0.3424"));
    }

    private static Request of(CheckValue value) {
        return new Request(value.calculation(), lines(value.inputs()));
    }

    /** So many sums of each calculation. */
    List<Request> byChance(Formulary formulary, int each) {
        return formulary.methods().stream().flatMap(method -> IntStream.range(0, each).mapToObj(one -> new Request(method.name(),
                method.inputs().stream().filter(input -> input.required() ? chance.nextInt(50) > 0 : chance.nextInt(3) > 0)
                        .map(input -> input.key() + "\t" + text(input)).collect(Collectors.joining("\n"))))).toList();
    }

    private static String lines(Map<String, String> inputs) {
        return inputs.entrySet().stream().map(input -> input.getKey() + "\t" + input.getValue())
                .collect(Collectors.joining("\n"));
    }

    private String text(Method.Input input) {
        if (chance.nextInt(60) == 0) {
            return any(MALFORMED);
        }
        if (!input.words().isEmpty()) {
            return any(input.words());
        }
        String between = input.example().contains("+") ? " + " : ", ";
        int count = !input.many() ? 1 : input.example().contains(between) ? input.example().split(",|\\+").length : 1 + chance.nextInt(4);
        return IntStream.range(0, count).mapToObj(one -> quantity(input)).collect(Collectors.joining(between));
    }

    /** A quantity of a kind that is allowed, mostly near the example, with or without a spread. */
    private String quantity(Method.Input input) {
        Dimension dimension = any(input.dimensions());
        double usual = exampleOf(input, dimension);
        String unit = any(Arrays.stream(Unit.values()).filter(each -> each.dimension() == dimension).toList()).symbol();
        Unit in = Unit.spelled(unit).orElse(Unit.usual(dimension));
        double value = Quantity.of(usual, Unit.usual(dimension)).in(in) * Math.pow(10, chance.nextGaussian() * 0.4);
        String number = digits(value);
        String after = unit.isEmpty() || unit.equals("pH") ? "" : " " + unit;
        return switch (chance.nextInt(6)) {
            case 0 -> number + " ± " + digits(Math.abs(value) * (0.001 + 0.1 * chance.nextDouble())) + after;
            case 1 -> number + " to " + digits(value + Math.abs(value) * chance.nextDouble()) + after;
            default -> number + after;
        };
    }

    private static double exampleOf(Method.Input input, Dimension dimension) {
        String first = input.example().split(", | \\+ ")[0];
        return QuantityReader.read(first, dimension).quantity().map(quantity -> quantity.in(Unit.usual(dimension)))
                .orElse(1.0);
    }

    private String digits(double value) {
        return new BigDecimal(value).round(new MathContext(1 + chance.nextInt(5))).toPlainString();
    }

    private <T> T any(List<T> choice) {
        return choice.get(chance.nextInt(choice.size()));
    }

    /** The requests as a page's script takes them, so many at a time. */
    static List<List<List<String>>> batches(List<Request> requests, int size) {
        List<List<List<String>>> batches = new ArrayList<>();
        for (int from = 0; from < requests.size(); from += size) {
            batches.add(requests.subList(from, Math.min(requests.size(), from + size)).stream()
                    .map(each -> List.of(each.calculation(), each.inputs())).toList());
        }
        return batches;
    }
}
