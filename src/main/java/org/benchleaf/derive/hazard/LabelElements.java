package org.benchleaf.derive.hazard;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.model.Precedence;
import org.benchleaf.model.Reference;

/**
 * What stands on a label for a set of statements: without those that a stronger one covers, with the signal word, the
 * pictograms and at most six precautions.
 *
 * <p>Source: Regulation (EC) No 1272/2008, articles 20, 26, 27 and 28.
 */
final class LabelElements {

    private static final int MOST_PRECAUTIONS = 6;
    private static final int LAST = Integer.MAX_VALUE;

    private final Reference reference;
    private final List<String> statements;

    LabelElements(Reference reference, Collection<String> given) {
        this.reference = reference;
        this.statements = given.stream().distinct().filter(code -> !covered(code, given))
                .sorted(Comparator.comparingInt(this::rank).thenComparing(Comparator.naturalOrder())).toList();
    }

    private boolean covered(String code, Collection<String> given) {
        return Optional.ofNullable(reference.precedence().get(code))
                .filter(row -> given.stream().anyMatch(row.leftOutBeside()::contains)).isPresent();
    }

    private int rank(String code) {
        return Optional.ofNullable(reference.statements().get(code)).map(Reference.Statement::rank).orElse(LAST);
    }

    /** H codes, most severe first. */
    List<String> statements() {
        return statements;
    }

    Optional<String> signal() {
        List<String> words = statements.stream().map(reference.statements()::get).filter(Objects::nonNull)
                .flatMap(statement -> statement.signal().stream()).toList();
        return words.contains("Danger") ? Optional.of("Danger") : words.stream().findFirst();
    }

    /** Pictograms by number; the exclamation mark gives way where something stronger says the same. */
    List<String> pictograms() {
        Set<String> codes = new LinkedHashSet<>();
        for (String statement : statements) {
            Precedence row = reference.precedence().get(statement);
            boolean hidden = row != null && statements.stream().anyMatch(row.noPictogramBeside()::contains);
            if (!hidden && reference.statements().containsKey(statement)) {
                reference.statements().get(statement).pictogram().ifPresent(codes::add);
            }
        }
        if (codes.contains("GHS06")) {
            codes.remove("GHS07");
        }
        return codes.stream().sorted().toList();
    }

    List<String> precautions() {
        return statements.stream().map(reference.statements()::get).filter(Objects::nonNull)
                .flatMap(statement -> statement.precautions().stream()).distinct()
                .sorted(Comparator.comparingInt(this::rank).thenComparing(Comparator.naturalOrder()))
                .limit(MOST_PRECAUTIONS).toList();
    }
}
