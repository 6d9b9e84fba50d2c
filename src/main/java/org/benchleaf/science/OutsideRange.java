package org.benchleaf.science;

/** Says that a formula does not hold for what was put in: which input, what was found, what is allowed and why. */
public final class OutsideRange extends IllegalArgumentException {

    private final String input;
    private final String found;
    private final String allowed;
    private final String source;

    OutsideRange(String input, String found, String allowed, String source) {
        super(input + ": found " + found + ", allowed is " + allowed + " (" + source + ")");
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
    public String found() {
        return found;
    }

    /** What is allowed, in words or as a range with its unit. */
    public String allowed() {
        return allowed;
    }

    /** Where the allowed range comes from. */
    public String source() {
        return source;
    }
}
