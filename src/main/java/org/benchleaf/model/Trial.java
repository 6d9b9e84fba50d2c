package org.benchleaf.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.message.Place;
import org.benchleaf.quantity.Unit;

/**
 * Treatments tried side by side.
 *
 * @param id how the file refers to it
 * @param question what it is to answer
 * @param of on what it is tried; empty where a publication does not tell it, or it was not read
 * @param what the test sheets, sample or places, in words
 * @param varies what differs from arm to arm
 * @param alike what is kept the same in every arm
 * @param arms in the order written
 * @param results what was measured, arm by arm
 * @param found the answer, in words; empty if none is drawn
 * @param place where in the file
 */
public record Trial(String id, String question, Optional<Ground> of, String what, String varies, List<String> alike,
        List<Arm> arms, List<Measure> results, Optional<String> found, Place place) {

    public Trial {
        alike = List.copyOf(alike);
        arms = List.copyOf(arms);
        results = List.copyOf(results);
    }

    /** On what arms are tried. */
    public enum Ground {
        TEST_SHEETS("test sheets"), SAMPLE("sample"), OBJECT("object");

        private final String word;

        Ground(String word) {
            this.word = word;
        }

        /** The word as written in a case file. */
        public String word() {
            return word;
        }

        /** The ground written with that word. */
        public static Optional<Ground> of(String word) {
            return List.of(values()).stream().filter(ground -> ground.word.equals(word)).findFirst();
        }
    }

    /**
     * One arm.
     *
     * @param id how the results refer to it
     * @param is what it is in the thing that varies, in words
     * @param control whether it is what the others are compared with
     * @param count how many sheets or places it has; empty if nobody recorded it
     * @param steps ids of the steps by which it is done
     */
    public record Arm(String id, String is, boolean control, Optional<Integer> count, List<String> steps) {
        public Arm {
            steps = List.copyOf(steps);
        }
    }

    /**
     * One thing measured in the arms.
     *
     * @param measure what was measured
     * @param method how
     * @param unit of the numbers
     * @param readings of the arms that have any
     */
    public record Measure(String measure, String method, Unit unit, List<Reading> readings) {
        public Measure {
            readings = List.copyOf(readings);
        }

        /** Whether a difference alone is given, of no arm what was read before or after. */
        public boolean isOfDifferences() {
            return readings.stream().anyMatch(reading -> reading.difference().isPresent()) && readings.stream().noneMatch(Reading::hasEnd);
        }

        /** What was read of an arm, if anything. */
        public Optional<Reading> of(Arm arm) {
            return readings.stream().filter(reading -> reading.arm().equals(arm.id())).findFirst();
        }
    }

    /**
     * What was read of an arm before and after; empty if nobody recorded it.
     *
     * @param before as it is stated; empty if it is told in words
     * @param after as it is stated; empty if it is told in words
     * @param wordsBefore a rank or a grade in words, of a measure that has no numbers
     * @param wordsAfter a rank or a grade in words, of a measure that has no numbers
     * @param difference between after and before, where that alone is given, such as a ΔE
     * @param rank where the arm stands among the arms, in words
     */
    public record Reading(String arm, Optional<StatedValue> before, Optional<StatedValue> after, Optional<String> wordsBefore,
            Optional<String> wordsAfter, Optional<StatedValue> difference, Optional<String> rank) {

        /** Whether a value before or after is given. */
        public boolean hasEnd() {
            return Stream.of(before, after, wordsBefore, wordsAfter).anyMatch(Optional::isPresent);
        }
    }

    /** The arm to which a step belongs, if it belongs to one. */
    public Optional<Arm> armOf(Step step) {
        return arms.stream().filter(arm -> arm.steps().contains(step.id())).findFirst();
    }
}
