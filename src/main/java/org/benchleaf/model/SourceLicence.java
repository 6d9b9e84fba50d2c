package org.benchleaf.model;

import java.util.List;
import java.util.Optional;
import org.benchleaf.message.Place;

/**
 * The licence of a publication from which a case is retold, and what it means for the retelling.
 *
 * @param words the licence as the author states it
 * @param terms whether a retelling may be published under it
 * @param keep a condition that no program can keep, as a sentence; empty if there is none
 * @param onward the only licences under which a retelling may be published; empty if any may be chosen
 */
public record SourceLicence(String words, Terms terms, Optional<String> keep, List<String> onward, Place place) {

    /** Whether a retelling may be published. */
    public enum Terms {
        /** It may. */
        ALLOWS,
        /** It may not without a permission. */
        FORBIDS,
        /** The licence is not stated, or what it allows is not on record. */
        NOT_KNOWN
    }

    public SourceLicence {
        onward = List.copyOf(onward);
    }

    /** Whether a retelling may be published without a permission. */
    public boolean allows() {
        return terms == Terms.ALLOWS;
    }
}
