package org.benchleaf.rule;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Whether a condition holds.
 *
 * @param missing the facts without which that cannot be told; empty where it can
 */
record Judgement(Truth truth, Set<MissingFact> missing) {

    static final Judgement YES = of(true);
    static final Judgement NO = of(false);

    static Judgement of(boolean holds) {
        return new Judgement(Truth.of(holds), Set.of());
    }

    static Judgement cannotTell(MissingFact missing) {
        return new Judgement(Truth.CANNOT_TELL, Set.of(missing));
    }

    boolean isYes() {
        return truth == Truth.YES;
    }

    boolean isNo() {
        return truth == Truth.NO;
    }

    Judgement not() {
        return new Judgement(truth.not(), missing);
    }

    /** Whether all hold; one that does not decides, whatever else cannot be told. */
    static <T> Judgement all(Stream<T> questions, Function<T, Judgement> judge) {
        return combined(questions, judge, Truth.NO);
    }

    /** Whether any holds; one that does decides, whatever else cannot be told. */
    static <T> Judgement any(Stream<T> questions, Function<T, Judgement> judge) {
        return combined(questions, judge, Truth.YES);
    }

    private static <T> Judgement combined(Stream<T> questions, Function<T, Judgement> judge, Truth deciding) {
        Set<MissingFact> missing = new LinkedHashSet<>();
        for (T question : (Iterable<T>) questions::iterator) {
            Judgement one = judge.apply(question);
            if (one.truth() == deciding) {
                return one;
            }
            missing.addAll(one.missing());
        }
        return missing.isEmpty() ? new Judgement(deciding.not(), Set.of()) : new Judgement(Truth.CANNOT_TELL, missing);
    }
}
