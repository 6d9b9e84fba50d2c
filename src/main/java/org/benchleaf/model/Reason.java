package org.benchleaf.model;

import java.util.Optional;
import org.benchleaf.message.Place;

/**
 * A reason recorded for departing from a rule.
 *
 * @param rule the rule's id
 * @param step id of the step it concerns; empty if it concerns the case
 * @param why the reason
 */
public record Reason(String rule, Optional<String> step, String why, Place place) {
}
