package org.benchleaf.rule;

import java.util.Optional;
import org.benchleaf.message.Message;
import org.benchleaf.message.Place;
import org.benchleaf.model.Rule;

/**
 * One rule, or one cell of the matrix, speaking of one thing.
 *
 * @param rule the id under which a reason is recorded
 * @param step the step it speaks of
 * @param settled the reason that the case itself gives, such as a protection that was tested; empty if there is none
 * @param what what is the matter, its holes filled
 */
record Speaking(String rule, Rule.Weight weight, boolean forTrainees, Optional<String> step, Optional<String> settled,
        Place place, String what, String why, String fix) {

    Message message() {
        return new RuleMessage(rule, weight, what, why, fix).told(place, step);
    }
}
