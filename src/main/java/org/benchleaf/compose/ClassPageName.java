package org.benchleaf.compose;

/**
 * A page that a class may have.
 *
 * @param kind such as {@code class-orders}; {@code class-page.<kind>} words it
 * @param ending how the name of its file ends, after that of the class
 */
record ClassPageName(String kind, String ending) {
}
