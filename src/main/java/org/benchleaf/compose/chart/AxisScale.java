package org.benchleaf.compose.chart;

import java.util.List;
import java.util.stream.IntStream;

/** A straight scale from numbers to places on a drawing, with round numbers to mark it at. */
record AxisScale(double from, double to, double start, double end) {

    /** A scale that holds all numbers with a little room at both ends. */
    static AxisScale holding(List<Double> numbers, double start, double end) {
        double least = numbers.stream().mapToDouble(Double::doubleValue).min().orElse(0);
        double most = numbers.stream().mapToDouble(Double::doubleValue).max().orElse(1);
        double step = step(least == most ? Math.max(1, Math.abs(most)) : most - least);
        double low = StrictMath.floor(least / step) * step;
        double high = StrictMath.ceil((most + step / 1e6) / step) * step;
        return new AxisScale(low, high > low ? high : low + step, start, end);
    }

    /** Where a number lies. */
    double at(double number) {
        return start + (number - from) / (to - from) * (end - start);
    }

    /** Round numbers across the scale, about five of them, whole multiples of their distance. */
    List<Double> marks() {
        double step = step(to - from);
        return IntStream.rangeClosed((int) StrictMath.ceil(from / step - 1e-9), (int) StrictMath.floor(to / step + 1e-9))
                .mapToObj(n -> n * step).toList();
    }

    /** As many decimals as tell one mark from the next. */
    int decimals() {
        return Math.max(0, (int) -StrictMath.floor(StrictMath.log10(step(to - from)) + 1e-9));
    }

    /** One, two or five times a power of ten, about a fifth of the span. */
    private static double step(double span) {
        double power = StrictMath.pow(10, StrictMath.floor(StrictMath.log10(span / 5)));
        double lead = span / 5 / power;
        return power * (lead < 1.5 ? 1 : lead < 3.5 ? 2 : lead < 7.5 ? 5 : 10);
    }
}
