package org.benchleaf.compose;

/**
 * A published source, cited by its number in the list of sources.
 *
 * @param number in that list
 * @param text author and year
 * @param href of its entry
 */
public record Citation(int number, String text, String href) {
}
