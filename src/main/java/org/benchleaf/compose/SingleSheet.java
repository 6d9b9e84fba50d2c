package org.benchleaf.compose;

/**
 * One block on a page of its own, which holds its style and needs no other file.
 *
 * @param title of the page
 * @param language BCP 47 tag of its words
 * @param block what it shows
 */
public record SingleSheet(String title, String language, Block block) {
}
