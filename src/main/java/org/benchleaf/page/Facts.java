package org.benchleaf.page;

import java.util.List;

/** A list of names and values. */
public record Facts(List<Fact> facts) implements Block {

    public Facts {
        facts = List.copyOf(facts);
    }
}
