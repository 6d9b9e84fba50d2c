package org.benchleaf.calculate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.benchleaf.message.Nearest;
import org.benchleaf.model.Formulary;
import org.benchleaf.model.Method;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.science.OutsideRange;

/**
 * Does any calculation by its name: reads and checks what is put in, fills in usual values, works it out, and carries
 * ranges and tolerances through.
 *
 * <p>Made once from the {@link Formulary}; never changed afterwards.
 */
public final class Calculations {

    /** Where an input's own usual value comes from. */
    public static final Origin USUAL = Origin.Place.USUAL;
    /** Where an input comes from that was written with the calculation itself. */
    public static final Origin GIVEN = Origin.Place.GIVEN;

    private final Formulary formulary;
    private final Map<String, Method> methods = new LinkedHashMap<>();
    private final Map<String, Function<Args, Answers>> formulas = new HashMap<>();

    /**
     * Binds every method of the formulary to its formula.
     *
     * @throws IllegalStateException if a method has no formula, or a formula no method
     */
    public Calculations(Formulary formulary) {
        this.formulary = formulary;
        formulary.methods().forEach(method -> methods.put(method.name(), method));
        new SolutionFormulas(formulary.table("flash-points"), formulary.table("vapour-limits")).bindTo(formulas);
        WaterFormulas.bindTo(formulas);
        new SheetFormulas(formulary.table("glassware")).bindTo(formulas);
        AmountFormulas.bindTo(formulas);
        ReadingFormulas.bindTo(formulas);
        if (!methods.keySet().equals(formulas.keySet())) {
            throw new IllegalStateException("methods and formulas differ: " + methods.keySet() + " and "
                    + formulas.keySet());
        }
    }

    /** The methods, sources and tables that the calculations rest on. */
    public Formulary formulary() {
        return formulary;
    }

    /**
     * Does a calculation from texts as an author writes them.
     *
     * @param name the name of the calculation
     * @param texts the inputs by key; an input with a usual value may be left out
     */
    public Outcome work(String name, Map<String, String> texts) {
        Method method = methods.get(name);
        if (method == null) {
            return unknown(name);
        }
        List<Refusal> refusals = unknownKeys(method, texts.keySet());
        Inputs inputs = Inputs.none();
        for (Method.Input input : method.inputs()) {
            if (texts.containsKey(input.key())) {
                try {
                    inputs = inputs.with(input.key(), new InputReading(input).read(texts.get(input.key()), GIVEN));
                } catch (NotAllowed slip) {
                    refusals.add(slip.refusal());
                }
            } else if (input.required()) {
                refusals.add(missing(input));
            }
        }
        return refusals.isEmpty() ? run(name, inputs) : new Outcome.Refused(refusals);
    }

    /**
     * Does a calculation from quantities and words already read.
     *
     * @param name the name of the calculation
     * @param inputs the inputs, each with where it comes from
     */
    public Outcome run(String name, Inputs inputs) {
        Method method = methods.get(name);
        if (method == null) {
            return unknown(name);
        }
        List<Refusal> refusals = unknownKeys(method, inputs.entries().keySet());
        Map<String, Inputs.Entry> complete = complete(method, inputs, refusals);
        if (!refusals.isEmpty()) {
            return new Outcome.Refused(refusals);
        }
        try {
            Function<Args, Answers> formula = formulas.get(name);
            return worked(method, complete, method.ownEnds() ? formula.apply(args(complete))
                    : Propagation.through(formula, args(complete)));
        } catch (NotAllowed contradiction) {
            return refused(contradiction.refusal());
        } catch (OutsideRange outside) {
            return refused(Refusal.notAllowed(outside.input(), outside.found(), outside.allowed(), outside.source()));
        } catch (ArithmeticException none) {
            return refused(new Refusal(Refusal.Kind.NO_ANSWER, name, Clause.value(none.getMessage()), Refusal.NOTHING, "", List.of()));
        }
    }

    private Map<String, Inputs.Entry> complete(Method method, Inputs inputs, List<Refusal> refusals) {
        Map<String, Inputs.Entry> complete = new LinkedHashMap<>();
        for (Method.Input input : method.inputs()) {
            InputReading reading = new InputReading(input);
            Inputs.Entry entry = inputs.entries().get(input.key());
            try {
                if (entry != null) {
                    complete.put(input.key(), reading.checked(entry));
                } else if (input.usual().isPresent()) {
                    complete.put(input.key(), reading.read(input.usual().get(), USUAL));
                } else if (input.required()) {
                    refusals.add(missing(input));
                }
            } catch (NotAllowed slip) {
                refusals.add(slip.refusal());
            }
        }
        return complete;
    }

    private static Args args(Map<String, Inputs.Entry> complete) {
        Map<String, List<Quantity>> values = new HashMap<>();
        Map<String, String> words = new HashMap<>();
        complete.forEach((key, entry) -> {
            if (entry.values().isEmpty()) {
                words.put(key, entry.word());
            } else {
                values.put(key, entry.values());
            }
        });
        return new Args(values, words);
    }

    private static Outcome worked(Method method, Map<String, Inputs.Entry> complete, Answers answers) {
        Map<String, Quantity> numbers = new LinkedHashMap<>();
        for (Method.Output output : method.outputs()) {
            Quantity number = answers.numbers().get(output.key());
            if (number != null) {
                // Readings may be of any kind; their mean keeps their unit.
                numbers.put(output.key(), number.dimension() == output.unit().dimension()
                        ? number.to(output.unit()) : number);
            } else if (!answers.words().containsKey(output.key()) && !answers.withheld().containsKey(output.key())) {
                throw new IllegalStateException(method.name() + " gives nothing for " + output.key());
            }
        }
        List<Figure.Given> givens = method.inputs().stream().filter(input -> complete.containsKey(input.key()))
                .flatMap(input -> complete.get(input.key()).givens(input).stream()).toList();
        return new Outcome.Worked(method, numbers, answers.words(), answers.withheld(), givens, answers.notes());
    }

    private static Refusal missing(Method.Input input) {
        return Refusal.missing(input.key(), new InputReading(input).allowed(), input.rangeSource());
    }

    private static List<Refusal> unknownKeys(Method method, Iterable<String> keys) {
        List<String> known = method.inputs().stream().map(Method.Input::key).toList();
        List<Refusal> refusals = new ArrayList<>();
        for (String key : keys) {
            if (!known.contains(key)) {
                refusals.add(new Refusal(Refusal.Kind.UNKNOWN_INPUT, key, Refusal.NOTHING, listed(known), "",
                        Nearest.several(key, known)));
            }
        }
        return refusals;
    }

    private Outcome unknown(String name) {
        List<String> known = List.copyOf(methods.keySet());
        return refused(new Refusal(Refusal.Kind.UNKNOWN_CALCULATION, name, Refusal.NOTHING, listed(known), "",
                Nearest.several(name, known)));
    }

    private static Clause listed(List<String> known) {
        return Clause.list(Clause.each(known));
    }

    private static Outcome refused(Refusal refusal) {
        return new Outcome.Refused(List.of(refusal));
    }
}
