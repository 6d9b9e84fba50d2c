package org.benchleaf.compose.part;

/**
 * A page that a class may have.
 *
 * @param kind such as {@code class-orders}; {@code class-page.<kind>} words it
 * @param ending how the name of its file ends, after that of the class
 * @param recipes whether it holds recipes, whose workings are left out on paper where the case says so
 */
public record ClassPageName(String kind, String ending, boolean recipes) {

    /** A page without recipes. */
    public ClassPageName(String kind, String ending) {
        this(kind, ending, false);
    }
}
