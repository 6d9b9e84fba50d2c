package org.benchleaf.check;

/**
 * What a value of a file means to its author.
 *
 * @param description a sentence
 * @param example as one would write it
 */
record FieldDescription(String description, String example, boolean takesWords) {
}
