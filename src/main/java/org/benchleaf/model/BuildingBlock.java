package org.benchleaf.model;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * The small vocabulary that every trade rule is built from: what can be asked of a case, a step, a medium.
 *
 * <p>Each block says what it takes in a rule file; its comment tells when it holds.
 */
public enum BuildingBlock {
    /** All of these fields are filled in, and not with a word such as "unknown". */
    HAS("has", Takes.FIELDS),
    /** Each of these fields says one of the words given for it. */
    SAYS("says", Takes.FIELD_WORDS),
    /** Each field is known and its upper end lies above the limit. */
    ABOVE("above", Takes.FIELD_LIMITS),
    /** Each field is known and its upper end does not pass the limit; a range on both sides of it leaves that open. */
    AT_MOST("at most", Takes.FIELD_LIMITS),
    /** Each field is known and its lower end reaches the limit; a range on both sides of it leaves that open. */
    AT_LEAST("at least", Takes.FIELD_LIMITS),
    /** Each field is known and its lower end lies below the limit. */
    BELOW("below", Takes.FIELD_LIMITS),
    /** Both fields are known and the first is greater, or later, than the second; ranges that overlap leave that open. */
    MORE_THAN("more than", Takes.FIELD_PAIRS),
    /** Both fields are known and the first is not greater, or later, than the second; ranges that overlap leave that open. */
    NO_MORE_THAN("no more than", Takes.FIELD_PAIRS),
    /** Two figures are in the ratio given, within a share of it. */
    RATIO("ratio", Takes.RATIO),
    /** These fields say what is seen, not only a time. */
    OBSERVED("observed", Takes.FIELDS),
    /** The step is one of these kinds. */
    KIND("kind", Takes.WORDS),
    /** The step has one of these parts. */
    PART("part", Takes.WORDS),
    /** A medium or the support that the step touches meets the condition. */
    TOUCHES("touches", Takes.CONDITION),
    /** Some step of the case meets the condition. */
    SOME_STEP("some step", Takes.CONDITION),
    /** Some step that comes before meets the condition. */
    EARLIER_STEP("earlier step", Takes.CONDITION),
    /** Some step that comes before, and after the last in which the sheet dried, meets the condition. */
    STEP_SINCE_DRYING("step since drying", Takes.CONDITION),
    /** Some step that comes after meets the condition. */
    LATER_STEP("later step", Takes.CONDITION),
    /** Some step that waits for this one meets the condition; a step beside it, with an order of its own, does not count. */
    FOLLOWING_STEP("following step", Takes.CONDITION),
    /** Something that is in the liquid answers to one of these words; without words, the step names a liquid. */
    LIQUID("liquid", Takes.WORDS),
    /** A liquid of the step, taken by itself, meets the condition. */
    SOME_LIQUID("some liquid", Takes.CONDITION),
    /** A tool or material of the step answers to one of these words. */
    TOOL("tool", Takes.WORDS),
    /** For each of these words some tool or material of the step answers to it. */
    TOOLS("tools", Takes.WORDS),
    /** The tools for dry cleaning that answer to these words stand in the order of the words. */
    IN_ORDER("tools in order", Takes.WORDS),
    /** What the step says to do speaks of each of its tools for dry cleaning. */
    TOOLS_TOLD("tools told", Takes.NOTHING),
    /** Each temperature in the words of the step is one that its parts give. */
    TEMPERATURES_ALIKE("temperatures alike", Takes.NOTHING),
    /** A number of damages in the words of the picture is the number that the condition lists. */
    COUNTS_ALIKE("counts alike", Takes.NOTHING),
    /** The medium or the support is one of these rows of the matrix. */
    LAYER("layer", Takes.WORDS),
    /** The matrix has a row for the medium. */
    KNOWN_LAYER("in the matrix", Takes.NOTHING),
    /** The matrix gives one of these verdicts for the action. */
    MATRIX("matrix", Takes.ACTION_VERDICTS),
    /**
     * A test with a liquid of the same composition gave one of these results; where one is asked for, a test whose result is not known
     * leaves that open.
     */
    TESTED("tested", Takes.WORDS),
    /**
     * A test of the medium with this indicator gave one of these results; where one is asked for, a test that is missing or does not
     * tell leaves that open.
     */
    INDICATED("indicator", Takes.INDICATORS),
    /**
     * A test of the paper with this indicator gave one of these results; where one is asked for, a test that is missing or does not
     * tell leaves that open.
     */
    PAPER_INDICATED("indicator on the paper", Takes.INDICATORS),
    /**
     * The longest test that passed lasted as long as the liquid touches the medium in all, with the baths planned; or as this time
     * where the case does not tell the contact.
     */
    DWELL("dwell covers contact", Takes.LIMIT),
    /** The case tells how long the liquid touches the medium; where it does not tell that in full, that is left open. */
    CONTACT_TOLD("contact told", Takes.NOTHING),
    /** The same with as many baths as the step allows at most. */
    DWELL_MOST("dwell covers most baths", Takes.LIMIT),
    /** The last baths were read as the end point asks. */
    END_POINT("end point read", Takes.NOTHING),
    /** An earlier step fixed the medium. */
    FIXED("fixed before", Takes.NOTHING),
    /**
     * An earlier step fixed the medium, and a test after it with the same liquid was stable; another one that does not tell leaves that
     * open.
     */
    PROTECTED("protected and tested again", Takes.NOTHING),
    /** The kind of step is in the approved proposal, or in an amendment dated before it. */
    AGREED("agreed", Takes.NOTHING),
    /** Each of these uses was permitted in writing on the day of the step. */
    PERMITTED("permitted", Takes.WORDS),
    /** The proposal has a sentence on the risk of this kind of step. */
    RISK_STATED("risk stated", Takes.NOTHING),
    /** A pH meter was calibrated on the day of the step, with enough buffers and one near the reading. */
    METER_READY("meter ready", Takes.METER),
    /** Each of these was measured both before and after. */
    MEASURED("measured", Takes.WORDS),
    /** The picture and its pair agree in these fields; what neither of them says is left open. */
    ALIKE("alike in the pair", Takes.FIELDS),
    /** The result names one of these methods and is not set against another of them. */
    APART("methods kept apart", Takes.WORDS);

    /** What a block takes in a rule file. */
    public enum Takes {
        NOTHING("`yes`"),
        WORDS("a list of words"),
        FIELDS("a list of fields"),
        FIELD_WORDS("fields, each with a list of words"),
        FIELD_LIMITS("fields, each with a quantity"),
        FIELD_PAIRS("fields, each with the field it is compared with"),
        LIMIT("a quantity"),
        CONDITION("a condition"),
        ACTION_VERDICTS("actions of the matrix, each with a list of verdicts"),
        INDICATORS("indicators, each with a list of results; an empty list takes any result"),
        RATIO("`of` and `to` (fields), `is` (a number) and `within` (a share)"),
        METER("`buffers` (a count) and `near` (how far, in pH)");

        private final String words;

        Takes(String words) {
            this.words = words;
        }

        /** In words, for the page of rules. */
        public String words() {
            return words;
        }
    }

    private final String word;
    private final Takes takes;

    BuildingBlock(String word, Takes takes) {
        this.word = word;
        this.takes = takes;
    }

    /** The word as written in a rule file. */
    public String word() {
        return word;
    }

    /** What it takes. */
    public Takes takes() {
        return takes;
    }

    /** The fact that it rests on besides its fields, in words; empty where it asks only fields or another condition. */
    Optional<String> fact() {
        return Optional.ofNullable(switch (this) {
            case KIND -> "kind of step";
            case PART -> "parts of the step";
            case EARLIER_STEP, STEP_SINCE_DRYING, LATER_STEP, FOLLOWING_STEP -> "order of the steps";
            case TOUCHES -> "media and paper that the step touches";
            case LIQUID -> "what the liquids hold";
            case TOOL, TOOLS, IN_ORDER, TOOLS_TOLD -> "tools of the step";
            case TEMPERATURES_ALIKE -> "words and temperatures of the step";
            case COUNTS_ALIKE -> "words of the picture and condition";
            case LAYER, KNOWN_LAYER, MATRIX -> "what the medium or paper is";
            case TESTED -> "spot tests";
            case INDICATED, PAPER_INDICATED -> "tests with an indicator";
            case DWELL, DWELL_MOST, CONTACT_TOLD -> "length of tests and of contact";
            case END_POINT -> "end point and readings of the baths";
            case FIXED, PROTECTED -> "earlier fixing and the tests after it";
            case AGREED -> "proposal and amendments";
            case PERMITTED -> "permissions";
            case RISK_STATED -> "risks in the proposal";
            case METER_READY -> "calibration of the pH meter";
            case MEASURED, APART -> "results and their methods";
            default -> null;
        });
    }

    /** The block written with that word. */
    public static Optional<BuildingBlock> of(String word) {
        return Stream.of(values()).filter(block -> block.word.equals(word)).findFirst();
    }
}
