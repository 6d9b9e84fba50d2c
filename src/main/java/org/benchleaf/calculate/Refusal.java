package org.benchleaf.calculate;

import java.util.List;

/**
 * Why a calculation was not done, so that it can be told to an author or on a terminal.
 *
 * @param kind what sort of fault it is
 * @param input the key it concerns; the name of the calculation where no single input is at fault
 * @param found what was found; empty where nothing was
 * @param allowed what is allowed, in words or as a range with its unit
 * @param source where that range comes from
 * @param near names that the author may have meant; empty unless a name is unknown
 */
public record Refusal(Kind kind, String input, String found, String allowed, String source, List<String> near) {

    /** The sorts of fault. */
    public enum Kind {
        /** No calculation has this name. */
        UNKNOWN_CALCULATION,
        /** The calculation has no input of this name. */
        UNKNOWN_INPUT,
        /** A required input is not there. */
        MISSING,
        /** The text cannot be read as what is needed. */
        UNREADABLE,
        /** The value lies outside the range of the formula, or contradicts another. */
        NOT_ALLOWED,
        /** The solver ended without an answer. */
        NO_ANSWER
    }

    public Refusal {
        near = List.copyOf(near);
    }

    static Refusal missing(String input, String allowed, String source) {
        return new Refusal(Kind.MISSING, input, "", allowed, source, List.of());
    }

    static Refusal unreadable(String input, String found, String allowed, String source) {
        return new Refusal(Kind.UNREADABLE, input, found, allowed, source, List.of());
    }

    static Refusal notAllowed(String input, String found, String allowed, String source) {
        return new Refusal(Kind.NOT_ALLOWED, input, found, allowed, source, List.of());
    }

    /** The refusal as one sentence. */
    public String sentence() {
        String tail = source.isEmpty() ? "." : " (" + source + ").";
        return switch (kind) {
            case UNKNOWN_CALCULATION -> "no calculation is called '" + input + "'" + suggestion();
            case UNKNOWN_INPUT -> "no input is called '" + input + "'" + suggestion();
            case MISSING -> input + " is missing; allowed is " + allowed + tail;
            case UNREADABLE, NOT_ALLOWED -> input + ": found " + found + "; allowed is " + allowed + tail;
            case NO_ANSWER -> input + " has no answer: " + found + tail;
        };
    }

    private String suggestion() {
        return near.isEmpty() ? "; the list: " + allowed + "." : "; did you mean " + String.join(" or ", near) + "?";
    }
}
