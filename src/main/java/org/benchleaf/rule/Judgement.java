package org.benchleaf.rule;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Whether a condition holds.
 *
 * @param missing the facts without which that cannot be told; empty where it can
 * @param judged whether the case tells something that it rests on; not where it holds only because the case is silent
 */
record Judgement(Truth truth, Set<MissingFact> missing, boolean judged) {

    static final Judgement YES = of(true);
    static final Judgement NO = of(false);
    /** It holds, since there is nothing of which it could fail. */
    static final Judgement YES_BY_SILENCE = new Judgement(Truth.YES, Set.of(), false);
    /** It does not hold, since the case says nothing of it. */
    static final Judgement NO_BY_SILENCE = new Judgement(Truth.NO, Set.of(), false);

    static Judgement of(boolean holds) {
        return new Judgement(Truth.of(holds), Set.of(), true);
    }

    /** What is recorded holds, and the record shows it; what is not does not hold, and nothing shows it. */
    static Judgement recorded(boolean holds) {
        return holds ? YES : NO_BY_SILENCE;
    }

    static Judgement cannotTell(MissingFact missing) {
        return new Judgement(Truth.CANNOT_TELL, Set.of(missing), false);
    }

    boolean isYes() {
        return truth == Truth.YES;
    }

    boolean isNo() {
        return truth == Truth.NO;
    }

    Judgement not() {
        return new Judgement(truth.not(), missing, judged);
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
        Optional<Judgement> decided = Optional.empty();
        boolean judged = false;
        for (T question : (Iterable<T>) questions::iterator) {
            Judgement one = judge.apply(question);
            if (one.truth() == deciding) {
                if (one.judged()) {
                    return one;
                }
                decided = Optional.of(one);
            }
            judged |= one.judged();
            missing.addAll(one.missing());
        }
        if (decided.isPresent()) {
            return decided.get();
        }
        return missing.isEmpty() ? new Judgement(deciding.not(), Set.of(), judged) : new Judgement(Truth.CANNOT_TELL, missing, false);
    }
}
