package org.benchleaf.model;

import java.util.List;
import java.util.Optional;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Unit;

/**
 * How one figure is worked out, in words that a page or a terminal can show.
 *
 * @param name the calculation's name, such as {@code ethanol-mixture}
 * @param title the name in words
 * @param subject under which the page of methods lists it
 * @param answers the question it answers, one sentence
 * @param formula the formula as plain text
 * @param mathml the same formula as presentation MathML, without the outer {@code math} element
 * @param range where the formula holds, in words
 * @param sources keys of the published sources
 * @param ownEnds whether the formula itself says what ends the result has, so that no spread is carried through to it: an
 *     amount chosen to suffice, the smallest and the largest of several
 * @param caveats what the result must not be taken for; may be empty
 * @param inputs what goes in
 * @param outputs what comes out
 */
public record Method(String name, String title, String subject, String answers, String formula, String mathml, String range,
        List<String> sources, boolean ownEnds, List<String> caveats, List<Input> inputs, List<Output> outputs) {

    public Method {
        sources = List.copyOf(sources);
        caveats = List.copyOf(caveats);
        inputs = List.copyOf(inputs);
        outputs = List.copyOf(outputs);
    }

    /**
     * One input.
     *
     * @param key the key as written on the command line
     * @param label the name in words
     * @param dimensions the dimensions accepted; empty for an input of words (a salt, a white point, yes or no)
     * @param words the words accepted where the input is words; empty otherwise
     * @param many whether a comma-separated list is expected
     * @param usual the value taken where none is given; empty if the input must be given or has no default
     * @param required whether it must be given
     * @param low the lowest value allowed, in {@code unit}
     * @param high the highest value allowed, in {@code unit}
     * @param unit the unit of low and high
     * @param rangeSource where the range comes from
     * @param example a value that works
     */
    public record Input(String key, String label, List<Dimension> dimensions, List<String> words, boolean many,
            Optional<String> usual, boolean required, Optional<Double> low, Optional<Double> high,
            Optional<Unit> unit, String rangeSource, String example) {

        public Input {
            dimensions = List.copyOf(dimensions);
            words = List.copyOf(words);
        }
    }

    /**
     * One output.
     *
     * @param key the key as printed
     * @param label the name in words
     * @param unit the unit in which the full-precision number is printed
     * @param yesOrNo whether it is an answer and no measure
     */
    public record Output(String key, String label, Unit unit, boolean yesOrNo) {
    }
}
