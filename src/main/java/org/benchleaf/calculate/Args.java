package org.benchleaf.calculate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;

/** The inputs of one evaluation, checked and complete, as a calculation asks for them. */
final class Args {

    private final Map<String, List<Quantity>> values;
    private final Map<String, String> words;

    Args(Map<String, List<Quantity>> values, Map<String, String> words) {
        this.values = Map.copyOf(values);
        this.words = Map.copyOf(words);
    }

    Map<String, List<Quantity>> values() {
        return values;
    }

    /** The one quantity of a required input, or of one with a usual value. */
    Quantity one(String key) {
        return list(key).get(0);
    }

    Optional<Quantity> optional(String key) {
        return Optional.ofNullable(values.get(key)).map(list -> list.get(0));
    }

    List<Quantity> list(String key) {
        List<Quantity> list = values.get(key);
        if (list == null) {
            throw new IllegalStateException("the method does not require '" + key + "', but its calculation does");
        }
        return list;
    }

    String word(String key) {
        String word = words.get(key);
        if (word == null) {
            throw new IllegalStateException("the method does not require '" + key + "', but its calculation does");
        }
        return word;
    }

    /** Whether an input that may be left out was given. */
    boolean has(String key) {
        return values.containsKey(key) || words.containsKey(key);
    }

    boolean yes(String key) {
        return word(key).equals("yes");
    }

    /** Three plain numbers, such as a colour. */
    List<Quantity> three(String key) {
        return exactly(3, key);
    }

    List<Quantity> exactly(int count, String key) {
        List<Quantity> list = list(key);
        if (list.size() != count) {
            throw new NotAllowed(Refusal.notAllowed(key, Written.numbers(list),
                    Clause.of("{count} numbers", "count", count), "what the formula asks for"));
        }
        return list;
    }

    boolean is(String key, Dimension dimension) {
        return one(key).dimension() == dimension;
    }

    /** The same inputs with one quantity of one list in another place. */
    Args replaced(String key, int index, Quantity quantity) {
        Map<String, List<Quantity>> changed = new HashMap<>(values);
        List<Quantity> list = new ArrayList<>(changed.get(key));
        list.set(index, quantity);
        changed.put(key, List.copyOf(list));
        return new Args(changed, words);
    }
}
