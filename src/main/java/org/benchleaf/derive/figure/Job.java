package org.benchleaf.derive.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.calculate.Calculations;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.calculate.Inputs;
import org.benchleaf.calculate.Origin;
import org.benchleaf.message.Place;
import org.benchleaf.model.Constant;
import org.benchleaf.quantity.Quantity;

/** One calculation to be done for a case: what goes in, where each input comes from, and which figures come out. */
public final class Job {

    public static final Origin CASE_FILE = Origin.Place.CASE_FILE;
    public static final Origin STUDIO = Origin.Place.STUDIO;
    public static final Origin MATERIAL = Origin.Place.MATERIAL;
    public static final Origin USUAL = Calculations.USUAL;

    /** One figure to be made of an output; labelled as the method labels it if no label is given. */
    record Output(String key, FigureKey figure, Optional<String> label) {

        String id() {
            return figure.id();
        }
    }

    private final String calculation;
    private final Place place;
    private boolean readable;
    private Inputs inputs = Inputs.none();
    private final List<Output> outputs = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final List<String> sources = new ArrayList<>();

    public Job(String calculation, Place place) {
        this.calculation = calculation;
        this.place = place;
    }

    public Job given(String key, Quantity value, Origin from) {
        inputs = inputs.with(key, value, from);
        return this;
    }

    public Job given(String key, List<Quantity> values, Origin from) {
        inputs = inputs.with(key, values, from);
        return this;
    }

    /** Several quantities, each with a label and a place of its own. */
    public Job each(String key, List<Figure.Given> givens) {
        inputs = inputs.withEach(key, givens);
        return this;
    }

    public Job word(String key, String word, Origin from) {
        inputs = inputs.withWord(key, word, from);
        return this;
    }

    /** A constant goes in, and its sources are cited. */
    public Job given(String key, Constant constant) {
        sources.addAll(constant.sources());
        return given(key, constant.value(), new Origin.OfConstant(constant.name()));
    }

    /** What the file states, else the constant. */
    Job given(String key, Optional<Quantity> written, Origin from, Constant otherwise) {
        return written.map(value -> given(key, value, from)).orElseGet(() -> given(key, otherwise));
    }

    /** What the file states, else the usual value of the calculation itself. */
    Job given(String key, Optional<Quantity> written, Origin from) {
        written.ifPresent(value -> given(key, value, from));
        return this;
    }

    /** The value of another figure goes in. */
    public Job given(String key, Figure figure) {
        return given(key, figure.value(), new Origin.OfFigure(figure.key()));
    }

    public Job gives(String output, FigureKey figure) {
        outputs.add(new Output(output, figure, Optional.empty()));
        return this;
    }

    public Job gives(String output, FigureKey figure, String label) {
        outputs.add(new Output(output, figure, Optional.of(label)));
        return this;
    }

    /** The figures are kept in the unit that a vessel or a balance shows. */
    public Job readable() {
        readable = true;
        return this;
    }

    /** A caveat that belongs to the figures of this job. */
    public Job note(String note) {
        notes.add(note);
        return this;
    }

    /** The source of an input, cited beside those of the method. */
    Job source(Optional<String> key) {
        key.ifPresent(sources::add);
        return this;
    }

    String calculation() {
        return calculation;
    }

    Place place() {
        return place;
    }

    public Inputs inputs() {
        return inputs;
    }

    List<Output> outputs() {
        return outputs;
    }

    boolean isReadable() {
        return readable;
    }

    List<String> notes() {
        return notes;
    }

    List<String> sources() {
        return sources;
    }
}
