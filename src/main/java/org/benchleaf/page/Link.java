package org.benchleaf.page;

/**
 * A way to another place.
 *
 * @param text makes sense alone
 * @param href relative to the page it stands on
 * @param current whether it is the page it stands on
 */
public record Link(String text, String href, boolean current) {

    /** A link to another page. */
    public static Link to(String text, String href) {
        return new Link(text, href, false);
    }
}
