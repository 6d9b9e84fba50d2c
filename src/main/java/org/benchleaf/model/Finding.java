package org.benchleaf.model;

import java.util.Optional;

/**
 * What asking a rule of the trade of a case came to.
 *
 * @param rule the rule's id
 * @param step id of the step it concerns; empty if the whole case
 * @param what what the rule found, in words; the rule itself where it is kept
 * @param reason the recorded reason that answers it; empty if there is none
 * @param forTrainees whether trainees must read the reason at that step
 */
public record Finding(String rule, Optional<String> step, String what, Optional<String> reason,
        boolean forTrainees, Standing standing) {

    /** How the case stands to the rule. */
    public enum Standing {
        /** Asked and kept everywhere. */
        KEPT,
        /** Not kept, for a recorded reason. */
        ANSWERED,
        /** Not kept, as the author was advised. */
        ADVISED,
        /** A fact is missing, so that it cannot be told whether it is kept. */
        NOT_TOLD,
        /** Of a case that is retold: the publication departs from it, or does not tell whether it was kept. */
        OPEN_IN_SOURCE
    }
}
