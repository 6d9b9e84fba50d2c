package org.benchleaf.calculate;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.model.Method;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;

/**
 * The figures of a case as a chain of calculations, which works again those that follow from a changed input.
 *
 * <p>A figure is worked again only where its calculation gives the figure's own value from its own inputs; of any other that
 * follows from a change it is told that its value no longer holds.
 */
public final class FigureChain {

    private static final Set<FigureKey.Owner> AT_THE_BENCH = Set.of(FigureKey.Owner.STEP, FigureKey.Owner.SOLUTION,
            FigureKey.Owner.TOTAL);
    private static final String AS_GIVEN = "as-given";
    private static final Clause MORE = Clause.of("the sheet does more with it than this calculation");
    private static final double SAME = 1e-9;
    private static final String TAB = "\t";

    /**
     * A figure that follows from what was changed.
     *
     * @param id the figure
     * @param rounding how it is told, as it was handed to {@link #text}
     * @param value the value now; empty where it could not be worked out
     * @param why why there is none; else empty
     * @param notes what the calculation has to say now and did not say before
     * @param causes the changes from which it follows, each as label and text
     */
    public record Reworked(String id, String rounding, Optional<Quantity> value, Clause why, List<Clause> notes,
            List<Clause> causes) {

        private Reworked because(List<Clause> changes) {
            return new Reworked(id, rounding, value, why, notes, changes);
        }
    }

    /** What was put into a figure: its values with their text or its word, and the figure that it is, if it is one. */
    private record Put(String key, String label, String text, List<Quantity> values, String word, String of) {
    }

    private record Node(String id, String group, String calculation, String output, String rounding, Quantity value,
            List<Put> puts) {
    }

    private final Calculations calculations;
    private final Map<String, Node> nodes = new LinkedHashMap<>();
    private final Map<String, Method> methods = new HashMap<>();

    private FigureChain(Calculations calculations) {
        this.calculations = calculations;
        calculations.formulary().methods().forEach(method -> methods.put(method.name(), method));
    }

    /**
     * The chain of figures as text that a page can carry: a line {@code figure} for each, then its lines {@code in}.
     *
     * @param figures every figure of a case, in the order in which they were worked out
     * @param rounding how the page tells a figure
     */
    public static String text(Collection<Figure> figures, Function<Figure, String> rounding) {
        return figures.stream().filter(figure -> AT_THE_BENCH.contains(figure.key().owner())).flatMap(figure -> Stream.concat(
                Stream.of(String.join(TAB, "figure", figure.id(), figure.key().group(), figure.method(), figure.output(),
                        rounding.apply(figure), ExactText.of(List.of(figure.value())))),
                figure.inputs().stream().map(FigureChain::line))).collect(Collectors.joining("\n"));
    }

    private static String line(Figure.Given given) {
        return String.join(TAB, "in", given.key(), given.label(), ExactText.of(given.values()),
                given.values().isEmpty() ? given.text() : "",
                given.from() instanceof Origin.OfFigure of ? of.key().id() : "");
    }

    /** The chain of a text that {@link #text} made. */
    public static FigureChain read(String text, Calculations calculations) {
        FigureChain chain = new FigureChain(calculations);
        List<Put> puts = new ArrayList<>();
        for (List<String> line : Cells.lines(text)) {
            if (line.get(0).equals("figure")) {
                puts = new ArrayList<>();
                chain.nodes.put(line.get(1), new Node(line.get(1), line.get(2), line.get(3), line.get(4), line.get(5),
                        ExactText.read(line.get(6)).get(0), puts));
            } else {
                puts.add(new Put(line.get(1), line.get(2), line.get(3), ExactText.read(line.get(3)), line.get(4), line.get(5)));
            }
        }
        return chain;
    }

    /**
     * The figures that follow from changed inputs, in the order in which they are worked out.
     *
     * @param changes of each the figure's id, the label of its input and the text that was put in; it holds for every figure of
     *     the same step or solution into which the same was put
     * @throws IllegalArgumentException if the chain has no such figure or input
     */
    public List<Reworked> follow(List<List<String>> changes) {
        Map<String, String> typed = new HashMap<>();
        changes.forEach(change -> typed.put(found(change), change.get(2)));
        Map<String, Reworked> results = new LinkedHashMap<>();
        for (Node node : nodes.values()) {
            if (node.puts.stream().anyMatch(put -> typed.containsKey(named(node, put)) || results.containsKey(put.of))) {
                results.put(node.id, again(node, typed, results).because(causes(node, typed, results)));
            }
        }
        return List.copyOf(results.values());
    }

    /** What it is under the name of its group: figures of one step or solution share what is labelled and reads alike. */
    private static String named(Node node, Put put) {
        return String.join(TAB, node.group, put.label, put.text, put.word, put.of);
    }

    private static List<Clause> causes(Node node, Map<String, String> typed, Map<String, Reworked> results) {
        return node.puts.stream().flatMap(put -> typed.containsKey(named(node, put))
                ? Stream.of(Clause.of("{input} {text}", "input", Clause.of(put.label), "text", typed.get(named(node, put))))
                : results.containsKey(put.of) ? results.get(put.of).causes().stream() : Stream.empty()).distinct().toList();
    }

    private String found(List<String> change) {
        Node node = Optional.ofNullable(nodes.get(change.get(0)))
                .orElseThrow(() -> new IllegalArgumentException("no figure " + change.get(0)));
        return node.puts.stream().filter(put -> put.label.equals(change.get(1))).findFirst().map(put -> named(node, put))
                .orElseThrow(() -> new IllegalArgumentException("no input " + change.get(1)));
    }

    private Reworked again(Node node, Map<String, String> typed, Map<String, Reworked> results) {
        Optional<Put> lost = node.puts.stream().filter(put -> results.containsKey(put.of)
                && results.get(put.of).value().isEmpty()).findFirst();
        if (lost.isPresent()) {
            return failed(node, Clause.of("{input} could not be worked out", "input", Clause.of(lost.get().label)));
        }
        try {
            return node.calculation.equals(AS_GIVEN) ? taken(node, typed, results) : worked(node, typed, results);
        } catch (NotAllowed slip) {
            return failed(node, slip.refusal().about(name(node, slip.refusal())));
        }
    }

    /** A figure that is taken over as it was put in. */
    private static Reworked taken(Node node, Map<String, String> typed, Map<String, Reworked> results) {
        Put put = node.puts.get(0);
        if (node.puts.size() > 1 || put.values.size() != 1 || !same(put.values.get(0), node.value)) {
            return failed(node, MORE);
        }
        String text = typed.get(named(node, put));
        Optional<Quantity> value = text == null ? results.get(put.of).value()
                : QuantityReader.read(text, node.value.dimension()).quantity().map(read -> asPut(read, text, put));
        return value.isEmpty() ? failed(node,
                Clause.of("'{text}' is not {kind}", "text", text, "kind", node.value.dimension().clause()))
                : new Reworked(node.id, node.rounding, value, Refusal.NOTHING, List.of(), List.of());
    }

    private Reworked worked(Node node, Map<String, String> typed, Map<String, Reworked> results) {
        Method method = methods.get(node.calculation);
        return method != null && run(node, method, Map.of(), Map.of()) instanceof Outcome.Worked own && holds(node, own)
                ? told(node, own, run(node, method, typed, results)) : failed(node, MORE);
    }

    private static Reworked told(Node node, Outcome.Worked before, Outcome now) {
        if (now instanceof Outcome.Refused refused) {
            return failed(node, Clause.sentences(refused.refusals().stream().map(each -> each.about(name(node, each))).toList()));
        }
        Outcome.Worked worked = (Outcome.Worked) now;
        Quantity value = worked.numbers().get(node.output);
        if (value == null) {
            return failed(node, worked.withheld().getOrDefault(node.output, Refusal.NOTHING));
        }
        return new Reworked(node.id, node.rounding, Optional.of(value), Refusal.NOTHING,
                worked.notes().stream().filter(note -> !before.notes().contains(note)).toList(), List.of());
    }

    /** What the refused input is called on the sheet; its key where that does not show it. */
    private static Clause name(Node node, Refusal refusal) {
        for (Put put : node.puts) {
            if (put.key.equals(refusal.input())) {
                return Clause.of(put.label);
            }
        }
        return Clause.of(refusal.input());
    }

    private static Reworked failed(Node node, Clause why) {
        return new Reworked(node.id, node.rounding, Optional.empty(), why, List.of(), List.of());
    }

    /** Whether the calculation gives what the sheet tells, and what goes in as a figure is that figure. */
    private boolean holds(Node node, Outcome.Worked own) {
        return own.numbers().containsKey(node.output) && same(own.numbers().get(node.output), node.value)
                && node.puts.stream().filter(put -> nodes.containsKey(put.of))
                        .allMatch(put -> put.values.size() == 1 && same(put.values.get(0), nodes.get(put.of).value));
    }

    private static boolean same(Quantity one, Quantity other) {
        return one.dimension() == other.dimension() && one.spread() == other.spread()
                && near(one.value(), other.in(one.unit())) && near(one.low(), other.lowIn(one.unit()))
                && near(one.high(), other.highIn(one.unit()));
    }

    private static boolean near(double one, double other) {
        return Math.abs(one - other) <= SAME * Math.max(Math.abs(one), Math.abs(other));
    }

    private Outcome run(Node node, Method method, Map<String, String> typed, Map<String, Reworked> results) {
        Inputs inputs = Inputs.none();
        for (Put put : node.puts) {
            Method.Input input = input(method, node, put);
            inputs = joined(inputs, input.key(), entry(input, put, typed.get(named(node, put)), results.get(put.of)));
        }
        return calculations.run(node.calculation, inputs);
    }

    /** The input of that key; where the parts of a list have names of their own, the list. */
    private static Method.Input input(Method method, Node node, Put put) {
        return method.inputs().stream().filter(input -> input.key().equals(put.key)).findFirst()
                .or(() -> method.inputs().stream().filter(input -> input.many()
                        && node.puts.stream().noneMatch(other -> other.key.equals(input.key()))).findFirst())
                .orElseThrow(() -> new IllegalArgumentException(method.name() + " has no input " + put.key));
    }

    private static Inputs.Entry entry(Method.Input input, Put put, String text, Reworked other) {
        if (text != null) {
            Inputs.Entry read = new InputReading(input).read(text, Calculations.GIVEN);
            return read.values().size() != 1 ? read
                    : new Inputs.Entry(List.of(asPut(read.values().get(0), text, put)), "", text, Calculations.GIVEN);
        }
        return new Inputs.Entry(other == null ? put.values : List.of(other.value().orElseThrow()), put.word,
                put.word.isEmpty() ? Written.of(put.values) : put.word, Calculations.GIVEN);
    }

    /** What stood there as a reading is known to its last digit now too. */
    private static Quantity asPut(Quantity read, String text, Put put) {
        return put.values.stream().anyMatch(value -> value.spread() == Quantity.Spread.RESOLUTION)
                ? QuantityReader.asReading(read, text) : read;
    }

    private static Inputs joined(Inputs inputs, String key, Inputs.Entry entry) {
        Inputs.Entry before = inputs.entries().get(key);
        return before == null ? inputs.with(key, entry)
                : inputs.with(key, Stream.concat(before.values().stream(), entry.values().stream()).toList(), entry.from());
    }
}
