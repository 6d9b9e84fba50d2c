package org.benchleaf.model;

/**
 * That a treatment is told from a publication and not from a record of the work.
 *
 * @param passage the publication
 * @param by who tells it from there, in words for the public
 * @param read what of the publication was read
 * @param notRead what of it was not
 */
public record Retelling(Passage passage, String by, String read, String notRead) {

    /** Whether all of the publication was read. */
    public boolean isWhole() {
        return notRead.strip().equals("nothing");
    }

}
