package org.benchleaf.compose.part;

/**
 * A page that a class may have.
 *
 * @param kind such as {@code class-orders}; {@code class-page.<kind>} words it
 * @param ending how the name of its file ends, after that of the class
 * @param workings whether it holds workings, which are left out on paper where the case says so
 */
public record ClassPageName(String kind, String ending, boolean workings) {

    /** A page without workings. */
    public ClassPageName(String kind, String ending) {
        this(kind, ending, false);
    }
}
