package org.benchleaf.privacy;

import java.util.Optional;

/**
 * One spelling of a private value that is looked for.
 *
 * @param letters what is looked for, in folded letters
 * @param caseId the case it belongs to
 * @param field the private field
 * @param isWhole whether it is a whole name or value, which is nobody else's by chance and is looked for in other cases too
 * @param evidence when a find counts
 */
record Needle(String letters, String caseId, String field, boolean isWhole, Evidence evidence) {

    /** Shorter values turn up inside other words, and among the bytes of a picture, by chance. */
    static final int LONG_ENOUGH = 8;

    /** Decides whether letters that were found are the value. */
    interface Evidence {

        boolean counts(Spot spot);

        /** What must stand beside it in a file of no case, where it may be somebody else's by chance; empty if nothing is enough. */
        default Optional<Evidence> amongOthers() {
            return Optional.empty();
        }
    }

    /** As it is looked for in another case: whole, or not at all. */
    Optional<Needle> inAnotherCase() {
        return isWhole ? Optional.of(this) : Optional.empty();
    }

    /** As it is looked for in what cases share: whole, or with what shows that this person is meant. */
    Optional<Needle> inSharedFile() {
        return isWhole ? Optional.of(this)
                : evidence.amongOthers().map(sure -> new Needle(letters, caseId, field, false, sure));
    }
}
