package org.benchleaf.calculate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;

/** The outputs of one evaluation while they are gathered. */
final class Answers {

    private final Map<String, Quantity> numbers = new LinkedHashMap<>();
    private final Map<String, String> words = new LinkedHashMap<>();
    private final Map<String, Clause> withheld = new LinkedHashMap<>();
    private final List<Clause> notes = new ArrayList<>();

    Answers number(String key, Quantity value) {
        if (Double.isInfinite(value.value())) {
            throw new NotAllowed(new Refusal(Refusal.Kind.NO_ANSWER, key, Clause.of("it comes out larger than a number can be"),
                    Refusal.NOTHING, "", List.of()));
        }
        numbers.put(key, value);
        return this;
    }

    Answers number(String key, Optional<Quantity> value, Clause whyNot) {
        return value.map(quantity -> number(key, quantity)).orElseGet(() -> withhold(key, whyNot));
    }

    Answers word(String key, String word) {
        words.put(key, word);
        return this;
    }

    Answers withhold(String key, Clause why) {
        withheld.put(key, why);
        return this;
    }

    Answers note(Clause note) {
        notes.add(note);
        return this;
    }

    Map<String, Quantity> numbers() {
        return numbers;
    }

    Map<String, String> words() {
        return words;
    }

    Map<String, Clause> withheld() {
        return withheld;
    }

    List<Clause> notes() {
        return notes;
    }
}
