package org.benchleaf.pack;

/**
 * What an edition came to.
 *
 * @param pages how many pages it has
 * @param files how many files, pages among them
 * @param bytes of all files together
 * @param written how many files were new or other than before
 * @param removed how many files of earlier editions went away
 * @param heaviest path of the page that loads most, with its pictures
 * @param weight how many bytes that page loads
 */
public record Edition(int pages, int files, long bytes, int written, int removed, String heaviest, long weight) {
}
