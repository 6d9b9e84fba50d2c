package org.benchleaf.page;

/**
 * A file beside the pages: numbers for a program, never a page.
 *
 * @param path relative to the site's root, with forward slashes
 * @param text what it holds, to be written as UTF-8
 */
public record DataFile(String path, String text) {
}
