package org.benchleaf.check;

/**
 * What a value of a file means to its author.
 *
 * @param description a sentence
 * @param example as one would write it
 * @param takesWords whether any text may stand there, and so the words for a value that nobody recorded
 * @param closed whether only one of some words may stand there
 * @param list whether only a list can stand there
 */
record FieldDescription(String description, String example, boolean takesWords, boolean closed, boolean list) {
}
