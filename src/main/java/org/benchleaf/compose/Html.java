package org.benchleaf.compose;

/**
 * Clean HTML that a template may write as it stands; every other string is escaped.
 *
 * <p>Made only from text that the reader has cleaned and from this package's own elements.
 */
public record Html(String markup) {

    /** Plain text as HTML, its special characters escaped. */
    public static Html ofText(String text) {
        return new Html(escape(text));
    }

    /** The text with the five special characters of HTML escaped. */
    static String escape(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
