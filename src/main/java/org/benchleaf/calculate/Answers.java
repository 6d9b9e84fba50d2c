package org.benchleaf.calculate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.quantity.Quantity;

/** The outputs of one evaluation while they are gathered. */
final class Answers {

    private final Map<String, Quantity> numbers = new LinkedHashMap<>();
    private final Map<String, String> words = new LinkedHashMap<>();
    private final Map<String, String> withheld = new LinkedHashMap<>();
    private final List<String> notes = new ArrayList<>();

    Answers number(String key, Quantity value) {
        if (Double.isInfinite(value.value())) {
            throw new ArithmeticException(key + " comes out larger than a number can be");
        }
        numbers.put(key, value);
        return this;
    }

    Answers number(String key, Optional<Quantity> value, String whyNot) {
        return value.map(quantity -> number(key, quantity)).orElseGet(() -> withhold(key, whyNot));
    }

    Answers word(String key, String word) {
        words.put(key, word);
        return this;
    }

    Answers withhold(String key, String why) {
        withheld.put(key, why);
        return this;
    }

    Answers note(String note) {
        notes.add(note);
        return this;
    }

    Map<String, Quantity> numbers() {
        return numbers;
    }

    Map<String, String> words() {
        return words;
    }

    Map<String, String> withheld() {
        return withheld;
    }

    List<String> notes() {
        return notes;
    }
}
