package org.benchleaf.calculate;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.model.Method;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;

/** What came of a calculation: its outputs, or the reasons why there are none. */
public sealed interface Outcome {

    /**
     * A calculation that was done.
     *
     * @param method the method
     * @param numbers the outputs that are numbers, by key, in the order of the method
     * @param words the outputs that are words, such as yes or no, by key
     * @param withheld the outputs that this time have no value, by key, with the reason
     * @param givens what was put in and where it came from
     * @param notes what a reader must know about these results
     */
    record Worked(Method method, Map<String, Quantity> numbers, Map<String, String> words,
            Map<String, Clause> withheld, List<Figure.Given> givens, List<Clause> notes) implements Outcome {

        public Worked {
            numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
            words = Collections.unmodifiableMap(new LinkedHashMap<>(words));
            withheld = Collections.unmodifiableMap(new LinkedHashMap<>(withheld));
            givens = List.copyOf(givens);
            notes = List.copyOf(notes);
        }
    }

    /**
     * A calculation that was not done.
     *
     * @param refusals every reason found, at least one
     */
    record Refused(List<Refusal> refusals) implements Outcome {

        public Refused {
            refusals = List.copyOf(refusals);
        }
    }
}
