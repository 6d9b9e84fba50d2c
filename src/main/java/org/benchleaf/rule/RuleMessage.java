package org.benchleaf.rule;

import java.util.Locale;
import java.util.Optional;
import org.benchleaf.message.Message;
import org.benchleaf.message.MessageId;
import org.benchleaf.message.Place;
import org.benchleaf.message.Severity;
import org.benchleaf.model.Rule;

/** A message made from a rule; its code is {@code RULE-} and the rule's id in capitals, and as stable as the id. */
record RuleMessage(String rule, Rule.Weight weight, String what, String why, String fix) implements MessageId {

    private static final String PREFIX = "RULE-";

    @Override
    public String code() {
        return PREFIX + rule.toUpperCase(Locale.ROOT);
    }

    @Override
    public Severity severity() {
        return weight == Rule.Weight.ADVICE ? Severity.ADVICE : Severity.ERROR;
    }

    /** The message with its holes already filled; where a reason would answer it, it says how to record one. */
    Message told(Place place, Optional<String> step) {
        if (weight != Rule.Weight.REASON) {
            return new Message(this, place, what, why, fix);
        }
        String record = "{rule: " + rule + step.map(id -> ", step: " + id).orElse("") + ", why: …}";
        return new Message(this, place, what + " This needs a stated reason.", why,
                fix + " To go on for a reason, add " + record + " under 'reasons:'.");
    }
}
