package org.benchleaf.calculate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.model.Method;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;
import org.benchleaf.quantity.QuantityReader.Reading;
import org.benchleaf.quantity.QuantityReader.Slip;
import org.benchleaf.quantity.Unit;

/** Reads one input from the text an author wrote, and holds it against the range that the method allows. */
final class InputReading {

    private final Method.Input input;

    InputReading(Method.Input input) {
        this.input = input;
    }

    /**
     * Reads the text.
     *
     * @throws NotAllowed if it cannot be read or lies outside the range
     */
    Inputs.Entry read(String text, Origin from) {
        if (input.dimensions().isEmpty()) {
            return new Inputs.Entry(List.of(), word(text), text.strip(), from);
        }
        List<Quantity> values = new ArrayList<>();
        for (String item : items(text)) {
            values.add(quantity(item));
        }
        return checked(new Inputs.Entry(values, "", text.strip(), from));
    }

    /**
     * The entry itself, once its kind and range are known to be right.
     *
     * @throws NotAllowed if they are not
     */
    Inputs.Entry checked(Inputs.Entry entry) {
        if (input.dimensions().isEmpty()) {
            return new Inputs.Entry(List.of(), word(entry.word()), entry.text(), entry.from());
        }
        if (entry.values().isEmpty() || (!input.many() && entry.values().size() > 1)) {
            throw new NotAllowed(Refusal.unreadable(input.key(), quoted(entry.text()), allowed(),
                    input.rangeSource()));
        }
        entry.values().forEach(this::requireAllowed);
        return entry;
    }

    /** What is allowed, for a message: the kind, the range with its unit, an example. */
    Clause allowed() {
        if (input.dimensions().isEmpty()) {
            return Clause.list(Clause.each(input.words()));
        }
        Clause kinds = input.dimensions().size() > 4 ? Clause.of("measured values")
                : Clause.either(Clause.each(input.dimensions().stream().map(Dimension::words).toList()));
        return Clause.of("{range}, such as {example}", "range", range(kinds), "example", input.example());
    }

    private Clause range(Clause kinds) {
        Optional<Unit> unit = input.unit();
        Optional<Double> low = input.low().filter(any -> unit.isPresent());
        Optional<Double> high = input.high().filter(any -> unit.isPresent());
        if (low.isPresent() && high.isPresent()) {
            return Clause.of("{kind} from {range}", "kind", kinds, "range", Written.range(low.get(), high.get(), unit.get()));
        }
        return low.map(least -> Clause.of("{kind}, at least {least}", "kind", kinds, "least", Written.said(Quantity.of(least, unit.get()))))
                .or(() -> high.map(most -> Clause.of("{kind}, at most {most}", "kind", kinds,
                        "most", Written.said(Quantity.of(most, unit.get()))))).orElse(kinds);
    }

    private static Clause quoted(String text) {
        return Clause.of("'{text}'", "text", text.strip());
    }

    private void requireAllowed(Quantity quantity) {
        if (!input.dimensions().contains(quantity.dimension())) {
            throw new NotAllowed(Refusal.notAllowed(input.key(), Clause.of("{value}, which is {kind}",
                    "value", Written.said(quantity), "kind", quantity.dimension().clause()), allowed(), input.rangeSource()));
        }
        boolean ranged = input.unit().filter(unit -> unit.dimension() == quantity.dimension()).isPresent();
        // A reading may lie on an end; only what someone stated as a range must lie within with both its ends.
        Quantity ends = quantity.asStated();
        if (ranged && !(input.low().orElse(Double.NEGATIVE_INFINITY) <= slack(ends.lowIn(input.unit().get()))
                && -slack(-ends.highIn(input.unit().get())) <= input.high().orElse(Double.POSITIVE_INFINITY))) {
            throw new NotAllowed(Refusal.notAllowed(input.key(), Written.said(quantity), allowed(),
                    input.rangeSource()));
        }
    }

    /** A little more than the number: one amount in two units may differ in the last place. */
    private static double slack(double number) {
        return number + 1e-12 * Math.abs(number);
    }

    private String word(String text) {
        String plain = text.strip().replace("°", "");
        return input.words().stream().filter(plain::equals).findFirst().orElseThrow(() -> new NotAllowed(
                Refusal.unreadable(input.key(), quoted(text), allowed(), input.rangeSource())));
    }

    private List<String> items(String text) {
        if (!input.many()) {
            return List.of(text);
        }
        if (input.example().contains("+")) {
            return parts(text.strip());
        }
        if (text.contains(", ") && QuantityReader.hasCommaInNumber(text)) {
            throw unreadable(text, Slip.DECIMAL_COMMA);
        }
        List<String> items = new ArrayList<>();
        int from = 0;
        for (int comma = text.indexOf(','); comma >= 0; comma = text.indexOf(',', from)) {
            items.add(text.substring(from, comma).strip());
            from = comma + 1;
        }
        items.add(text.substring(from).strip());
        return items;
    }

    /** The parts of "1 + 5"; the sign of "+3" and that of an exponent as in "1e+5" cut nothing. */
    private static List<String> parts(String text) {
        List<String> parts = new ArrayList<>();
        int from = 0;
        for (int plus = text.indexOf('+'); plus >= 0; plus = text.indexOf('+', plus + 1)) {
            String before = text.substring(from, plus).strip();
            if (!before.isEmpty() && before.charAt(before.length() - 1) >= '0' && before.charAt(before.length() - 1) <= '9') {
                parts.add(before);
                from = plus + 1;
            }
        }
        parts.add(text.substring(from).strip());
        return parts;
    }

    private Quantity quantity(String text) {
        Optional<Slip> first = Optional.empty();
        for (Dimension dimension : input.dimensions()) {
            Reading reading = QuantityReader.read(text, dimension);
            if (reading.quantity().isPresent()) {
                return reading.quantity().get();
            }
            if (first.isEmpty() || first.get() == Slip.OTHER_DIMENSION) {
                first = reading.slip();
            }
        }
        throw unreadable(text, first.orElse(Slip.NOT_A_NUMBER));
    }

    private NotAllowed unreadable(String text, Slip slip) {
        return new NotAllowed(Refusal.unreadable(input.key(), Clause.of("{text}, {slip}",
                "text", quoted(text), "slip", Clause.of(words(slip))), allowed(),
                input.rangeSource()));
    }

    private static String words(Slip slip) {
        return switch (slip) {
            case EMPTY -> "which is nothing";
            case DECIMAL_COMMA -> "in which a comma may be a decimal mark (write a point)";
            case BARE_PERCENT -> "which does not say of what (write % v/v, % m/m or % m/v)";
            case COLON_RATIO -> "which may mean one in all or one and the rest (write '1 + 4' or 'one-in=5')";
            case HOUSEHOLD_MEASURE -> "a measure that differs from hand to hand (write mL or g)";
            case NO_UNIT -> "which has no unit";
            case UNKNOWN_UNIT -> "whose unit is not in the table of units";
            case OTHER_DIMENSION -> "which is another kind of quantity";
            case RANGE_BACKWARDS -> "a range whose second end is the lower one";
            case BEYOND_LIMITS -> "which is far smaller or larger than anything measured";
            case NOT_A_NUMBER -> "which is not a number with a unit";
        };
    }
}
