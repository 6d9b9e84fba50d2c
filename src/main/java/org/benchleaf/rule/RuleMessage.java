package org.benchleaf.rule;

import java.util.Locale;
import java.util.Optional;
import org.benchleaf.message.Message;
import org.benchleaf.message.OpenQuestion;
import org.benchleaf.message.Place;
import org.benchleaf.message.Severity;

/**
 * A message made from a rule; its code is {@code RULE-} and the rule's id in capitals, and as stable as the id.
 *
 * @param leftToSource whether it asks a retold case for what only its publication can tell
 */
record RuleMessage(String rule, Severity severity, String what, String why, String fix, boolean leftToSource) implements Message.Id {

    private static final String PREFIX = "RULE-";

    @Override
    public String code() {
        return PREFIX + rule.toUpperCase(Locale.ROOT);
    }

    /**
     * The message with its holes already filled; where a reason would answer it, it says how to record one.
     *
     * @param asks the fact that it asks for; none where it tells what was not kept
     */
    Message told(Place place, Optional<String> step, OpenQuestion asks, boolean takesReason) {
        if (!takesReason) {
            return new Message(this, place, what, why, fix, asks);
        }
        String record = "{rule: " + rule + step.map(id -> ", step: " + id).orElse("") + ", why: …}";
        return asks.isNone()
                ? new Message(this, place, what + " This needs a stated reason.", why,
                        fix + " To go on for a reason, add " + record + " under 'reasons:'.")
                : new Message(this, place, what, why,
                        fix + " If it cannot be found out, say why it was done all the same: add " + record + " under 'reasons:'.", asks);
    }
}
