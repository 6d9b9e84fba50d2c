package org.benchleaf.model;

/**
 * How many of a thing are laid out.
 *
 * @param role what the thing is in a step, such as {@code carrier}
 * @param each how many
 * @param per for whom: {@code sheet}, {@code station} or {@code person}
 * @param usedUp whether some are laid out to spare
 * @param words how it is laid out; may be empty
 */
public record LayOutRow(String role, int each, String per, boolean usedUp, String words) {
}
