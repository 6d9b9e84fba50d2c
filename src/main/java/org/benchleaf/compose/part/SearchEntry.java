package org.benchleaf.compose.part;

/**
 * What the search knows of one page or part of a page.
 *
 * @param path of the page, with a fragment if it is a part
 * @param kind of the page, such as {@code step-sheet}
 * @param title by which it is listed
 * @param label the kind in words
 * @param about a sentence shown below the title where the page has no sentences of its own; may be empty
 * @param strong stems of its title, headings and most frequent words, as {@link WordList} packs them
 * @param weak stems of the rest of its text
 */
public record SearchEntry(String path, String kind, String title, String label, String about, String strong, String weak) {
}
