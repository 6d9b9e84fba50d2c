package org.benchleaf.science;

import org.benchleaf.quantity.Clause;

/** Says that a formula does not hold for what was put in: which input, what was found, what is allowed and why. */
public final class OutsideRange extends IllegalArgumentException {

    private final String input;
    private final transient Clause found;
    private final transient Clause allowed;
    private final String source;

    OutsideRange(String input, Clause found, Clause allowed, String source) {
        super(input + ": found " + found.english() + ", allowed is " + allowed.english() + " (" + source + ")");
        this.input = input;
        this.found = found;
        this.allowed = allowed;
        this.source = source;
    }

    /** The key of the input, as the list of calculations spells it. */
    public String input() {
        return input;
    }

    /** What was put in, with its unit. */
    public Clause found() {
        return found;
    }

    /** What is allowed, in words or as a range with its unit. */
    public Clause allowed() {
        return allowed;
    }

    /** Where the allowed range comes from. */
    public String source() {
        return source;
    }
}
