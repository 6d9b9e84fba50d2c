package org.benchleaf.calculate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Quantity.Spread;
import org.benchleaf.quantity.Unit;
import org.benchleaf.science.OutsideRange;

/**
 * Carries the spread of what is put in through to what comes out.
 *
 * <p>Ranges are chosen, not measured: the calculation is done with every combination of their ends, and the outermost
 * results are the ends of the output. With more than ten ranges, each is moved alone and the deviations are added,
 * which is the same for sums and careful for the rest. A result that has its extreme between the ends of a range is
 * not found this way; the formulas of the trade grow or fall throughout.
 *
 * <p>Tolerances (± U) and readings are measured: each is moved alone by its own U, half the difference of the two results is its
 * share, and the shares are added as squares (GUM, JCGM 100:2008, 5.1.2, with numeric sensitivities). A tolerance
 * that a formula states for its own result is one more share. A count cannot lie off by a share of one, so a count
 * takes its outermost results instead.
 *
 * <p>What follows from readings alone is itself known to their last digits.
 *
 * <p>Where ranges and tolerances both occur, the outermost results of the ranges are widened by the tolerance.
 */
final class Propagation {

    private static final int MOST_CORNERS = 10;
    /** A share of a value that is left by the last places of doubles and no uncertainty, common practice, no source. */
    private static final double NOISE = 1e-12;

    private final Function<Args, Answers> calculation;
    private final Args given;
    private final Args middle;
    private final Answers central;
    private final List<Slot> ranges;
    private final List<Slot> tolerances;

    /** One quantity of one input. */
    private record Slot(String key, int index, Quantity quantity) {

        Args low(Args args) {
            return args.replaced(key, index, Quantity.of(quantity.low(), quantity.unit()));
        }

        Args high(Args args) {
            return args.replaced(key, index, Quantity.of(quantity.high(), quantity.unit()));
        }
    }

    private Propagation(Function<Args, Answers> calculation, Args given) {
        this.calculation = calculation;
        this.given = given;
        this.ranges = slots(Spread.RANGE);
        this.tolerances = slots(Spread.TOLERANCE, Spread.RESOLUTION);
        this.middle = exact();
        this.central = calculation.apply(middle);
    }

    /** The answers for these inputs, their spread carried through. */
    static Answers through(Function<Args, Answers> calculation, Args given) {
        return new Propagation(calculation, given).answers();
    }

    private Answers answers() {
        if (ranges.isEmpty() && tolerances.isEmpty()) {
            return central;
        }
        List<Answers> ends = ends();
        List<Answers[]> moved = moved();
        Answers answers = new Answers();
        central.notes().forEach(answers::note);
        central.withheld().forEach(answers::withhold);
        central.words().forEach((key, word) -> answers.word(key, word(key, word, ends, moved)));
        central.numbers().forEach((key, value) -> {
            Optional<Clause> why = ends.stream().map(end -> end.withheld().get(key)).filter(each -> each != null)
                    .findFirst();
            if (why.isPresent()) {
                answers.withhold(key, Clause.of("at one end of the range: {why}", "why", why.get()));
            } else {
                answers.number(key, spread(key, value, ends, moved));
            }
        });
        return answers;
    }

    private Quantity spread(String key, Quantity value, List<Answers> ends, List<Answers[]> moved) {
        if (value.unit() == Unit.COUNT) {
            return outermostCount(key, value, ends, moved);
        }
        double squares = value.spread() == Spread.TOLERANCE ? value.halfWidth() * value.halfWidth() : 0;
        boolean read = value.spread() != Spread.TOLERANCE;
        for (int k = 0; k < moved.size(); k++) {
            double share = share(key, value, moved.get(k));
            squares += share * share;
            read &= share == 0 || tolerances.get(k).quantity().spread() == Spread.RESOLUTION;
        }
        double noise = NOISE * Math.abs(value.value());
        double tolerance = Math.sqrt(squares) < noise ? 0 : Math.sqrt(squares);
        double[] outermost = outermost(key, value, ends);
        if (outermost[1] - outermost[0] <= noise && value.spread() != Spread.RANGE) {
            return read ? Quantity.resolved(value.value(), tolerance, value.unit())
                    : Quantity.plusMinus(value.value(), tolerance, value.unit());
        }
        return Quantity.between(outermost[0] - tolerance, value.value(), outermost[1] + tolerance, value.unit());
    }

    private double[] outermost(String key, Quantity value, List<Answers> ends) {
        double low = low(value);
        double high = high(value);
        double sumLow = 0;
        double sumHigh = 0;
        boolean alone = ranges.size() > MOST_CORNERS;
        for (Answers end : ends) {
            Quantity found = end.numbers().getOrDefault(key, value);
            sumLow += Math.min(0, low(found) - value.value());
            sumHigh += Math.max(0, high(found) - value.value());
            low = Math.min(low, low(found));
            high = Math.max(high, high(found));
        }
        return alone ? new double[] {value.value() + sumLow, value.value() + sumHigh} : new double[] {low, high};
    }

    private static Quantity outermostCount(String key, Quantity value, List<Answers> ends, List<Answers[]> moved) {
        double low = value.low();
        double high = value.high();
        List<Answers> all = new ArrayList<>(ends);
        moved.forEach(pair -> all.addAll(List.of(pair)));
        for (Answers each : all) {
            Quantity found = each.numbers().getOrDefault(key, value);
            low = Math.min(low, found.low());
            high = Math.max(high, found.high());
        }
        return Quantity.between(low, value.value(), high, value.unit());
    }

    private static double share(String key, Quantity value, Answers[] pair) {
        double first = pair[0].numbers().getOrDefault(key, value).value();
        double last = pair[pair.length - 1].numbers().getOrDefault(key, value).value();
        return pair.length == 2 ? (last - first) / 2 : last - value.value();
    }

    private static String word(String key, String word, List<Answers> ends, List<Answers[]> moved) {
        List<Answers> all = new ArrayList<>(ends);
        moved.forEach(pair -> all.addAll(List.of(pair)));
        return all.stream().allMatch(each -> word.equals(each.words().get(key))) ? word : "undecided";
    }

    /** The results at the ends of the ranges: all combinations, or with many ranges one at a time. */
    private List<Answers> ends() {
        List<Args> corners = new ArrayList<>(List.of(middle));
        if (ranges.size() > MOST_CORNERS) {
            corners.clear();
            for (Slot slot : ranges) {
                corners.add(slot.low(middle));
                corners.add(slot.high(middle));
            }
        } else {
            for (Slot slot : ranges) {
                corners = corners.stream().flatMap(args -> List.of(slot.low(args), slot.high(args)).stream()).toList();
            }
        }
        return ranges.isEmpty() ? List.of() : corners.stream().map(calculation).toList();
    }

    /**
     * The results with each tolerance moved down and up. Where one side leaves the range of the formula (a purity of
     * 99.9 ± 0.2 %), the other side stands for both.
     */
    private List<Answers[]> moved() {
        List<Answers[]> moved = new ArrayList<>();
        for (Slot slot : tolerances) {
            Optional<Answers> down = tried(slot.low(middle));
            Optional<Answers> up = tried(slot.high(middle));
            if (down.isEmpty() && up.isEmpty()) {
                calculation.apply(slot.low(middle));
            }
            moved.add(down.isPresent() && up.isPresent() ? new Answers[] {down.get(), up.get()}
                    : new Answers[] {down.or(() -> up).orElseThrow()});
        }
        return moved;
    }

    private Optional<Answers> tried(Args args) {
        try {
            return Optional.of(calculation.apply(args));
        } catch (OutsideRange | NotAllowed outside) {
            return Optional.empty();
        }
    }

    private List<Slot> slots(Spread... spreads) {
        List<Slot> slots = new ArrayList<>();
        for (Map.Entry<String, List<Quantity>> input : new TreeMap<>(given.values()).entrySet()) {
            for (int k = 0; k < input.getValue().size(); k++) {
                if (List.of(spreads).contains(input.getValue().get(k).spread())) {
                    slots.add(new Slot(input.getKey(), k, input.getValue().get(k)));
                }
            }
        }
        return slots;
    }

    private Args exact() {
        Args args = given;
        for (List<Slot> slots : List.of(ranges, tolerances)) {
            for (Slot slot : slots) {
                args = args.replaced(slot.key(), slot.index(), slot.quantity().exact());
            }
        }
        return args;
    }

    private static double low(Quantity quantity) {
        return quantity.spread() == Spread.RANGE ? quantity.low() : quantity.value();
    }

    private static double high(Quantity quantity) {
        return quantity.spread() == Spread.RANGE ? quantity.high() : quantity.value();
    }
}
