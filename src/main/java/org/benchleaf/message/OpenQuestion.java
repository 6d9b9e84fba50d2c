package org.benchleaf.message;

/**
 * What a message asks that the case leaves open.
 *
 * @param fact that is missing, as a clause such as {@code 'temperature:' under 'bath:' is not known}; empty where nothing is asked
 * @param step of which it is asked; empty where it is asked of no step
 */
public record OpenQuestion(String fact, String step) {

    /** Of a message that asks nothing. */
    public static final OpenQuestion NONE = new OpenQuestion("", "");

    public boolean isNone() {
        return fact.isEmpty();
    }
}
