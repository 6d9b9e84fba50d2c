package org.benchleaf.rule;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.message.Place;
import org.benchleaf.model.Matrix;
import org.benchleaf.model.Medium;
import org.benchleaf.model.PrintObject;

/**
 * A medium, or the support with what belongs to it.
 *
 * @param name the medium's id, or {@code paper}
 * @param words every word that may name a row of the matrix
 * @param states words on its condition
 * @param medium the medium; empty for the support
 * @param rows the rows that the matrix has for it
 */
record Layer(String name, List<String> words, List<String> states, Optional<Medium> medium, List<Matrix.Row> rows,
        Place place) {

    /** The word by which tests name the support. */
    static final String PAPER = "paper";

    static Layer of(Medium medium, Matrix matrix) {
        List<String> words = List.of(medium.is());
        return new Layer(medium.id(), words, medium.state(), Optional.of(medium), rows(words, matrix), medium.place());
    }

    static Layer support(PrintObject object, Matrix matrix) {
        List<String> words = Stream.of(Stream.of(object.support().paper()), object.support().features().stream(),
                object.features().stream()).flatMap(word -> word).toList();
        return new Layer(PAPER, words, object.support().state(), Optional.empty(), rows(words, matrix),
                object.support().place());
    }

    /** Whether it is said what it is; what a medium is not known to be is asked by a rule of its own. */
    boolean isNamed() {
        return medium.isPresent() || WordComparison.known(words.get(0));
    }

    /** Whether one of these words names it or a row that it belongs to. */
    boolean isOneOf(List<String> wanted) {
        Set<String> ids = rows.stream().map(Matrix.Row::id).collect(Collectors.toSet());
        return wanted.stream().anyMatch(word -> ids.contains(word)
                || words.stream().anyMatch(own -> own.strip().equalsIgnoreCase(word)));
    }

    private static List<Matrix.Row> rows(List<String> words, Matrix matrix) {
        return words.stream().flatMap(word -> matrix.rowsFor(word).stream()).distinct().toList();
    }
}
