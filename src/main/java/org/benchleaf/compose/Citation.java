package org.benchleaf.compose;

import org.benchleaf.model.Inline;

/**
 * A published source, cited by its number in the list of sources.
 *
 * @param number in that list
 * @param text author and year
 * @param href of its entry
 */
public record Citation(int number, String text, String href) {

    /** The link to its entry, with author and year. */
    Inline link() {
        return Inline.Hyperlink.to(href, "[" + number + "] " + text);
    }

    /** The link to its entry, by its number alone. */
    Inline byNumber() {
        return Inline.Hyperlink.to(href, "[" + number + "]");
    }
}
