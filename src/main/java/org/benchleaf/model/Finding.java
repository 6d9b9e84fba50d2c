package org.benchleaf.model;

import java.util.Optional;

/**
 * What asking a rule of the trade of a case came to.
 *
 * @param rule the rule's id
 * @param step id of the step it concerns; empty if the whole case
 * @param what what the rule found, to a reader of the pages; the rule itself where it is kept
 * @param reason the reason that answers it; empty if there is none
 * @param forTrainees whether trainees must read the reason at that step
 * @param protection which the reason tells of, where the case itself gives it; empty for a recorded reason
 */
public record Finding(String rule, Optional<String> step, String what, Optional<String> reason,
        boolean forTrainees, Standing standing, Optional<Protection> protection) {

    /** What no protection answers. */
    public Finding(String rule, Optional<String> step, String what, Optional<String> reason, boolean forTrainees, Standing standing) {
        this(rule, step, what, reason, forTrainees, standing, Optional.empty());
    }

    /** The same in the words of a translation. */
    public Finding told(String words, Optional<String> why, TreatmentCase told, Phrases phrases) {
        Optional<Protection> there = protection.map(one -> one.in(told));
        return new Finding(rule, step, words, there.map(one -> one.words(phrases)).or(() -> why), forTrainees, standing, there);
    }

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
        OPEN_IN_SOURCE,
        /** Of a treatment that is done: its record does not tell whether it was kept. */
        NOT_RECORDED,
        /** Of a treatment that is done: whoever did it says that it was kept, and nothing was written down. */
        NOT_WRITTEN_DOWN,
        /** Of a treatment that is done: it was not kept. */
        NOT_DONE;

        /** Whether the case is told without leading anybody to repeat it, since a rule that stops a case is open in it. */
        public boolean isOpen() {
            return this == OPEN_IN_SOURCE || isOfThePast();
        }

        /** Whether the case file answers the rule for a treatment that is done. */
        public boolean isOfThePast() {
            return this == NOT_RECORDED || this == NOT_WRITTEN_DOWN || this == NOT_DONE;
        }
    }
}
