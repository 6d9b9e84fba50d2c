package org.benchleaf.pack;

/**
 * What is remembered of one case from one run to the next.
 *
 * @param key tells the content from which the files were made
 * @param note what the caller wants to have back, in the caller's own form
 * @param batch the files
 */
record Remembered(String key, String note, Batch batch) {
}
