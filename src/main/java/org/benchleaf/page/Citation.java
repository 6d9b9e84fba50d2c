package org.benchleaf.page;

import org.benchleaf.text.Inline;

/**
 * A published source, cited by its number in the list of sources.
 *
 * @param number in that list
 * @param text author and year, with the title where others have the same
 * @param href of its entry
 */
public record Citation(int number, String text, String href) {

    /** The link to its entry, with author and year. */
    public Inline link() {
        return Inline.Hyperlink.to(href, "[" + number + "] " + text);
    }

    /** The link to its entry, by its number alone. */
    public Inline byNumber() {
        return Inline.Hyperlink.to(href, "[" + number + "]");
    }
}
