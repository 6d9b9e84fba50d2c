package org.benchleaf.page;

import java.util.Optional;
import org.benchleaf.text.Inline;

/**
 * A source: a publication by its number in the list of sources, what is none by its name.
 *
 * @param number in that list; empty of what is no publication
 * @param text author and year, with the title where others have the same
 * @param href of its entry
 */
public record Citation(Optional<Integer> number, String text, String href) {

    /** The link to its entry, with author and year. */
    public Inline link() {
        return Inline.Hyperlink.to(href, told());
    }

    /** The link to its entry, by its number alone where it has one. */
    public Inline byNumber() {
        return Inline.Hyperlink.to(href, number.map(one -> "[" + one + "]").orElse(text));
    }

    /** The number, and author and year; of what is no publication its name. */
    public String told() {
        return number.map(one -> "[" + one + "] ").orElse("") + text;
    }
}
