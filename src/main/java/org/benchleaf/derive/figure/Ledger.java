package org.benchleaf.derive.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.calculate.Calculations;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.calculate.Inputs;
import org.benchleaf.calculate.Origin;
import org.benchleaf.calculate.Outcome;
import org.benchleaf.message.FigureMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Method;
import org.benchleaf.model.Phrases;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.TextLanguage;

/** The figures of one case as they are worked out, each with what it was worked out from. */
public final class Ledger {

    private static final String RANGE = "{low} to {high}";

    private final Map<String, Figure> figures = new LinkedHashMap<>();
    private final Calculations calculations;
    private final Map<String, Method> methods;
    private final Phrases phrases;
    private final Messages messages;

    public Ledger(Calculations calculations, Map<String, Method> methods, Phrases phrases, Messages messages) {
        this.calculations = calculations;
        this.methods = methods;
        this.phrases = phrases;
        this.messages = messages;
    }

    /** Every figure by its id, in the order in which they were worked out. */
    public Map<String, Figure> figures() {
        return Collections.unmodifiableMap(new LinkedHashMap<>(figures));
    }

    /** One figure, if it has been worked out. */
    public Optional<Figure> figure(String id) {
        return Optional.ofNullable(figures.get(id));
    }

    /** The ids of all figures so far, in the order in which they were worked out. */
    public Set<String> ids() {
        return new LinkedHashSet<>(figures.keySet());
    }

    /** Does a calculation of one output; its figure, none if an input lies outside its range. */
    public Optional<Figure> one(Job job) {
        return Optional.ofNullable(work(job).get(job.outputs().get(0).id()));
    }

    /** Does a calculation; gives its figures by id, none if an input lies outside its range, which is then told. */
    public Map<String, Figure> work(Job job) {
        Outcome outcome = calculations.run(job.calculation(), job.inputs());
        if (outcome instanceof Outcome.Refused refused) {
            String figure = job.outputs().get(0).id();
            refused.refusals().forEach(refusal -> messages.add(FigureMessages.REFUSED.at(job.place(),
                    "figure", figure, "calculation", job.calculation(), "refusal", refusal.sentence())));
            return Map.of();
        }
        Outcome.Worked worked = (Outcome.Worked) outcome;
        List<String> notes = notes(job, worked);
        Map<String, Figure> made = new LinkedHashMap<>();
        for (Job.Output output : job.outputs()) {
            Optional.ofNullable(worked.numbers().get(output.key())).ifPresent(value -> made.put(output.id(),
                    keep(new Figure(output.figure(), label(worked.method(), output),
                            job.isReadable() ? AmountConversion.readable(value) : value, job.calculation(),
                            output.key(), worked.givens(), sources(job, worked.method()), notes))));
        }
        return made;
    }

    /** One output alone, for a number that goes into another calculation; empty where there is none. */
    public Optional<Quantity> value(String calculation, Inputs inputs, String output) {
        return outcome(calculation, inputs) instanceof Outcome.Worked worked
                ? Optional.ofNullable(worked.numbers().get(output)) : Optional.empty();
    }

    /** The whole outcome, for results that need words and reasons beside numbers. */
    public Outcome outcome(String calculation, Inputs inputs) {
        return calculations.run(calculation, inputs);
    }

    private List<String> notes(Job job, Outcome.Worked worked) {
        Set<String> notes = new LinkedHashSet<>(job.notes());
        TextLanguage language = new TextLanguage(phrases::ofProgram, '.', false);
        worked.notes().forEach(note -> notes.add(note.said(language)));
        worked.method().outputs().forEach(output -> {
            Optional.ofNullable(worked.words().get(output.key()))
                    .ifPresent(word -> notes.add(phrases.say("{output}: {word}.", "output", output.label(), "word",
                            phrases.ofProgram(word))));
            Optional.ofNullable(worked.withheld().get(output.key()))
                    .filter(why -> job.outputs().stream().anyMatch(asked -> asked.key().equals(output.key())))
                    .ifPresent(why -> notes.add(phrases.say("{output}: no value, {why}.", "output", output.label(),
                            "why", why.said(language))));
        });
        notes.addAll(worked.method().caveats());
        return List.copyOf(notes);
    }

    private static List<String> sources(Job job, Method method) {
        Set<String> sources = new LinkedHashSet<>(method.sources());
        sources.addAll(job.sources());
        return new ArrayList<>(sources);
    }

    private static String label(Method method, Job.Output output) {
        return output.label().orElseGet(() -> method.outputs().stream()
                .filter(one -> one.key().equals(output.key())).map(Method.Output::label).findFirst()
                .orElse(output.key().replace('-', ' ')));
    }

    /** Keeps a figure for which nothing is calculated, such as one taken over as written. */
    public Figure put(FigureKey key, String label, Quantity value, String method, List<Figure.Given> inputs, String... notes) {
        List<String> sources = Optional.ofNullable(methods.get(method)).map(Method::sources).orElse(List.of());
        return keep(new Figure(key, label, value, method, inputs, sources, List.of(notes)));
    }

    /** Takes out a figure that has become part of another. */
    void drop(String id) {
        figures.remove(id);
    }

    /** Keeps a figure, in the place of one of the same id, in the language of the library. */
    Figure keep(Figure figure) {
        Figure told = new Figure(figure.key(), phrases.ofProgram(figure.label()), figure.value(), figure.method(), figure.output(),
                figure.inputs().stream().map(this::told).toList(), figure.sources(),
                figure.notes().stream().map(phrases::ofProgram).toList());
        figures.put(told.id(), told);
        return told;
    }

    private Figure.Given told(Figure.Given given) {
        // The text of quantities is made of numbers, units and the word between the ends of a range.
        String text = given.values().isEmpty() ? given.text() : given.text().replace(" to ", phrases.say(RANGE, "low", "", "high", ""));
        return new Figure.Given(given.key(), phrases.ofProgram(given.label()), given.values(), text, given.from());
    }

    public static Figure.Given given(String key, String label, Quantity value, Origin from) {
        return new Figure.Given(key, label, List.of(value), Reading.of(value), from);
    }

    /** A figure as the input of another. */
    public static Figure.Given given(Figure figure) {
        return new Figure.Given(figure.id(), figure.label(), List.of(figure.value()), Reading.of(figure.value()),
                new Origin.OfFigure(figure.key()));
    }
}
