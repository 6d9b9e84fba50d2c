package org.benchleaf.model;

import java.util.Optional;

/**
 * What a rule of the trade had to say about a case.
 *
 * @param rule the rule's id
 * @param step id of the step it concerns; empty if the whole case
 * @param what what the rule found, in words
 * @param reason the recorded reason that answers it; empty for advice
 * @param forTrainees whether trainees must read the reason at that step
 */
public record Finding(String rule, Optional<String> step, String what, Optional<String> reason,
        boolean forTrainees) {
}
