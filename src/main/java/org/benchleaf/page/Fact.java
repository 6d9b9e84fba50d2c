package org.benchleaf.page;

import org.benchleaf.text.RichText;

/** A name and what belongs to it: a row of a list of facts. */
public record Fact(String name, RichText value) {

    /** A fact in plain text. */
    public static Fact of(String name, String value) {
        return new Fact(name, RichText.of(value));
    }
}
