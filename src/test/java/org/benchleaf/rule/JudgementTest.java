package org.benchleaf.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds the three-valued logic against the strong tables of S. C. Kleene (1952), Introduction to Metamathematics, § 64. */
class JudgementTest {

    private static final MissingFact FACT = MissingFact.liquid();

    @ParameterizedTest
    @CsvSource({
        "YES,         YES,         YES,         YES",
        "YES,         NO,          NO,          YES",
        "YES,         CANNOT_TELL, CANNOT_TELL, YES",
        "NO,          YES,         NO,          YES",
        "NO,          NO,          NO,          NO",
        "NO,          CANNOT_TELL, NO,          CANNOT_TELL",
        "CANNOT_TELL, YES,         CANNOT_TELL, YES",
        "CANNOT_TELL, NO,          NO,          CANNOT_TELL",
        "CANNOT_TELL, CANNOT_TELL, CANNOT_TELL, CANNOT_TELL",
    })
    void both_and_either_follow_the_tables(Truth one, Truth other, Truth both, Truth either) {
        assertThat(Judgement.all(Stream.of(one, other), JudgementTest::judged).truth()).isEqualTo(both);
        assertThat(Judgement.any(Stream.of(one, other), JudgementTest::judged).truth()).isEqualTo(either);
    }

    @ParameterizedTest
    @CsvSource({"YES, NO", "NO, YES", "CANNOT_TELL, CANNOT_TELL"})
    void the_opposite_of_what_cannot_be_told_cannot_be_told(Truth one, Truth opposite) {
        assertThat(judged(one).not().truth()).isEqualTo(opposite);
    }

    @Test
    void what_is_decided_names_no_missing_fact() {
        assertThat(Judgement.all(Stream.of(Truth.CANNOT_TELL, Truth.NO), JudgementTest::judged).missing()).isEmpty();
        assertThat(Judgement.all(Stream.of(Truth.CANNOT_TELL, Truth.YES), JudgementTest::judged).missing()).containsExactly(FACT);
    }

    /** By hand: a condition is judged where one thing that it asks about is told; what decides it is told wherever it can be. */
    @Test
    void what_holds_by_silence_alone_was_not_judged() {
        assertThat(Judgement.any(Stream.of(Judgement.NO_BY_SILENCE, Judgement.NO_BY_SILENCE), one -> one).judged()).isFalse();
        assertThat(Judgement.any(Stream.of(Judgement.NO_BY_SILENCE, Judgement.NO), one -> one).judged()).isTrue();
        assertThat(Judgement.all(Stream.of(Judgement.NO_BY_SILENCE, Judgement.NO), one -> one).judged()).isTrue();
        assertThat(Judgement.all(Stream.<Judgement>of(), one -> one).judged()).isFalse();
        assertThat(Judgement.NO_BY_SILENCE.not()).isEqualTo(Judgement.YES_BY_SILENCE);
    }

    private static Judgement judged(Truth truth) {
        return truth == Truth.CANNOT_TELL ? Judgement.cannotTell(FACT) : Judgement.of(truth == Truth.YES);
    }
}
