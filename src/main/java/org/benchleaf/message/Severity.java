package org.benchleaf.message;

/** How much a message weighs. */
public enum Severity {
    /** Nothing is published until it is put right. */
    ERROR,
    /** Published, but the author should look. */
    WARNING,
    /** A colleague's hint. */
    ADVICE;

    /** The word printed before the code. */
    public String word() {
        return switch (this) {
            case ERROR -> "error";
            case WARNING -> "warning";
            case ADVICE -> "advice";
        };
    }
}
