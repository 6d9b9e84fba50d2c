package org.benchleaf.publish;

/**
 * The styles of what is taken away from the site.
 *
 * @param book of books
 * @param sheet of sheets laid out on paper
 * @param drawing of the drawings on these
 */
public record TakenStyles(String book, String sheet, String drawing) {
}
