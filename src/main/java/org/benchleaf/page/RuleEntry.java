package org.benchleaf.page;

import java.util.List;

/**
 * A rule of the trade as the page of rules tells it.
 *
 * @param anchor where links to it arrive
 * @param statement the rule, one sentence
 * @param code the id by which a case file gives a reason for departing from it
 * @param facts weight, why, source, who holds it, what the studio changed
 */
public record RuleEntry(String anchor, String statement, String code, List<Fact> facts) implements Block {

    public RuleEntry {
        facts = List.copyOf(facts);
    }
}
