package org.benchleaf.calculate;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.model.Method;
import org.benchleaf.quantity.Quantity;

/**
 * What is put into a calculation: quantities, lists of quantities or words, each with where it comes from.
 *
 * <p>Never changed; {@code with} gives a new one.
 */
public final class Inputs {

    private static final Inputs NONE = new Inputs(Map.of());

    private final Map<String, Entry> entries;

    /**
     * One input.
     *
     * @param values its quantities; empty for an input of words
     * @param word its word; empty for an input of quantities
     * @param text the input as it reads
     * @param from where it comes from, as in {@link Figure.Given}
     * @param each the quantities one by one where each comes from elsewhere; else empty
     */
    record Entry(List<Quantity> values, String word, String text, Origin from, List<Figure.Given> each) {

        Entry(List<Quantity> values, String word, String text, Origin from) {
            this(values, word, text, from, List.of());
        }

        /** What was put in for an input, as a figure lists it. */
        List<Figure.Given> givens(Method.Input input) {
            return each.isEmpty() ? List.of(new Figure.Given(input.key(), input.label(), values, text, from)) : each;
        }
    }

    private Inputs(Map<String, Entry> entries) {
        this.entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }

    /** Nothing put in yet. */
    public static Inputs none() {
        return NONE;
    }

    /** These inputs and one quantity more, from where it is said. */
    public Inputs with(String key, Quantity value, Origin from) {
        return with(key, List.of(value), from);
    }

    /** These inputs and a list of quantities. */
    public Inputs with(String key, List<Quantity> values, Origin from) {
        return with(key, new Entry(List.copyOf(values), "", Written.of(values), from));
    }

    /** These inputs and a list of which each quantity has a label and a place of its own. */
    public Inputs withEach(String key, List<Figure.Given> each) {
        List<Quantity> values = each.stream().flatMap(given -> given.values().stream()).toList();
        return with(key, new Entry(values, "", Written.of(values), each.get(0).from(), List.copyOf(each)));
    }

    /** These inputs and a word. */
    public Inputs withWord(String key, String word, Origin from) {
        return with(key, new Entry(List.of(), word, word, from));
    }

    Inputs with(String key, Entry entry) {
        Map<String, Entry> more = new LinkedHashMap<>(entries);
        more.put(key, entry);
        return new Inputs(more);
    }

    Map<String, Entry> entries() {
        return entries;
    }
}
