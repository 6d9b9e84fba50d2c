package org.benchleaf.calculate;

import java.util.List;
import org.benchleaf.quantity.Clause;

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
public record Refusal(Kind kind, String input, Clause found, Clause allowed, String source, List<String> near) {

    static final Clause NOTHING = Clause.of("");

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

    static Refusal missing(String input, Clause allowed, String source) {
        return new Refusal(Kind.MISSING, input, NOTHING, allowed, source, List.of());
    }

    static Refusal unreadable(String input, Clause found, Clause allowed, String source) {
        return new Refusal(Kind.UNREADABLE, input, found, allowed, source, List.of());
    }

    static Refusal notAllowed(String input, Clause found, Clause allowed, String source) {
        return new Refusal(Kind.NOT_ALLOWED, input, found, allowed, source, List.of());
    }

    /** The refusal as one sentence in English, the input by its key. */
    public String sentence() {
        return about(Clause.of(input)).english();
    }

    /**
     * The refusal as one sentence.
     *
     * @param name what the input is called where the sentence is read
     */
    public Clause about(Clause name) {
        return switch (kind) {
            case UNKNOWN_CALCULATION -> Clause.of("no calculation is called '{name}'{suggestion}", "name", input,
                    "suggestion", suggestion());
            case UNKNOWN_INPUT -> Clause.of("no input is called '{name}'{suggestion}", "name", input, "suggestion", suggestion());
            case MISSING -> Clause.of("{input} is missing; allowed is {allowed}{source}.", "input", name, "allowed", allowed,
                    "source", bracketed());
            case UNREADABLE, NOT_ALLOWED -> Clause.of("{input}: found {found}; allowed is {allowed}{source}.", "input", name,
                    "found", found, "allowed", allowed, "source", bracketed());
            case NO_ANSWER -> Clause.of("{input} has no answer: {found}.", "input", name, "found", found);
        };
    }

    private Clause bracketed() {
        return source.isEmpty() ? NOTHING : Clause.of(" ({source})", "source", Clause.of(source));
    }

    private Clause suggestion() {
        return near.isEmpty() ? Clause.of("; the list: {list}.", "list", allowed)
                : Clause.of("; did you mean {near}?", "near", Clause.either(Clause.each(near)));
    }
}
