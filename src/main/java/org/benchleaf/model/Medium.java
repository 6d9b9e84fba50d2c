package org.benchleaf.model;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.message.Place;

/**
 * One medium on the sheet.
 *
 * @param id how the file refers to it
 * @param is what it is; a key of the treatment matrix, such as {@code printing ink}
 * @param colour its colour, in words
 * @param where where it is; empty if all over
 * @param state such as {@code friable}, {@code heavy}, {@code dark verso}, {@code once dissolved}
 * @param grade condition grade of iron-gall ink: good, fair, poor or bad
 * @param of ids of the items that bear it; the whole object if empty
 */
public record Medium(String id, String is, Optional<String> colour, Optional<String> where, List<String> state,
        Optional<String> grade, List<String> of, Place place) {

    public Medium {
        state = List.copyOf(state);
        of = List.copyOf(of);
    }

    /** Whether what a step is done to bears it; a step on no item is done to all, and a medium of no item may be on each. */
    public boolean isMetBy(Step step) {
        return of.isEmpty() || step.of().isEmpty() || step.of().stream().anyMatch(of::contains);
    }

    /** The colour to tell beside what it is; empty where that tells it already, as "red ink" does, and where nobody recorded it. */
    public Optional<String> colourBeside() {
        return colour.filter(word -> MissingValue.read(word).isEmpty())
                .filter(word -> !is.toLowerCase(Locale.ROOT).contains(word.toLowerCase(Locale.ROOT)));
    }
}
