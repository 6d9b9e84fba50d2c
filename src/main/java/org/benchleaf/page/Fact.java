package org.benchleaf.page;

import java.util.Optional;
import org.benchleaf.text.RichText;

/**
 * A name and what belongs to it: a row of a list of facts.
 *
 * @param name what it is about
 * @param href where more is told of the name, relative to the page; empty if nowhere
 * @param value what belongs to it
 */
public record Fact(String name, Optional<String> href, RichText value) {

    /** A fact whose name leads nowhere. */
    public Fact(String name, RichText value) {
        this(name, Optional.empty(), value);
    }

    /** A fact in plain text. */
    public static Fact of(String name, String value) {
        return new Fact(name, RichText.of(value));
    }
}
