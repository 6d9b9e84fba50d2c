package org.benchleaf.calculate;

import java.util.List;
import org.benchleaf.quantity.Quantity;

/**
 * A worked-out number with its working.
 *
 * @param key whose it is and what it is called
 * @param label what it is, in words
 * @param value the number at full precision, with its low and high ends
 * @param method the name of the calculation; {@link org.benchleaf.model.Method} tells formula and range
 * @param output the key of the output of the calculation that it is; empty where it is of none, or was changed afterwards
 * @param inputs what was put in, in the order of the formula
 * @param sources keys of the sources, those of the method and those of its inputs
 * @param notes caveats that belong to this figure
 */
public record Figure(FigureKey key, String label, Quantity value, String method, String output,
        List<Given> inputs, List<String> sources, List<String> notes) {

    public Figure {
        inputs = List.copyOf(inputs);
        sources = List.copyOf(sources);
        notes = List.copyOf(notes);
    }

    /** A figure that no calculation gives as it stands. */
    public Figure(FigureKey key, String label, Quantity value, String method, List<Given> inputs, List<String> sources,
            List<String> notes) {
        this(key, label, value, method, "", inputs, sources, notes);
    }

    /** The name by which prose cites it, such as {@code wash.volume}. */
    public String id() {
        return key.id();
    }

    /**
     * What was put in for one input: a number, a list of readings or a word.
     *
     * @param key the input's key
     * @param label what it is, in words
     * @param values the quantities; several for a list of readings, none for a word
     * @param text the value as it reads, unit included
     * @param from where it comes from
     */
    public record Given(String key, String label, List<Quantity> values, String text, Origin from) {

        public Given {
            values = List.copyOf(values);
        }
    }
}
