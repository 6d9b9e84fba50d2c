package org.benchleaf.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What everybody must know before the first step: what is dangerous, what to wear, what to do if it happens.
 *
 * @param id anchor
 * @param heading of the briefing
 * @param lead one line below it
 * @param cautions the gravest first
 * @param wear what to wear, in words
 * @param hazards what the solutions and materials in use can do
 * @param aid first aid in the usual words, then the studio's own
 * @param waste where what is left goes
 * @param defer what stands above this sheet
 * @param read id and words of the box that is ticked when it was read; empty if it stands before no steps
 * @param words fixed labels
 */
public record Briefing(String id, String heading, String lead, List<Caution> dangers, List<Caution> cautions, List<Fact> wear,
        List<Hazard> hazards, List<Fact> aid, List<Fact> waste, String defer, Optional<Tick> read, Map<String, String> words)
        implements Block {

    public Briefing {
        dangers = List.copyOf(dangers);
        cautions = List.copyOf(cautions);
        wear = List.copyOf(wear);
        hazards = List.copyOf(hazards);
        aid = List.copyOf(aid);
        waste = List.copyOf(waste);
    }

    /** A box to tick: its id on the page and its words. */
    public record Tick(String id, String text) {
    }
}
