package org.benchleaf.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.text.RichText;

/**
 * One thing to prepare: how much, from what, how, and what it can do.
 *
 * @param anchor of the preparation
 * @param title what the label says
 * @param batch how much to make at a time
 * @param times how often it is made, in words; empty if once
 * @param begin when to begin, in words
 * @param measures what to measure out
 * @param how what to do, in order
 * @param facts keeps, storage, used in
 * @param cautions what must not be claimed or forgotten
 * @param wear what to wear while it is made, in words
 * @param hazard what it can do
 * @param working the figures behind it
 * @param words fixed labels
 */
public record RecipeCard(String anchor, String title, Optional<Working> batch, Optional<String> times,
        Optional<String> begin, List<Measure> measures, List<RichText> how, List<Fact> facts, List<Caution> cautions,
        List<String> wear, Optional<Hazard> hazard, List<Working> working, Map<String, String> words) implements Block {

    public RecipeCard {
        measures = List.copyOf(measures);
        how = List.copyOf(how);
        facts = List.copyOf(facts);
        cautions = List.copyOf(cautions);
        wear = List.copyOf(wear);
        working = List.copyOf(working);
    }

    /**
     * One thing to measure out.
     *
     * @param amount as the vessel or balance shows it
     * @param of what is measured
     * @param with the vessel or balance, and how near it comes
     * @param working of the exact amount
     */
    public record Measure(String amount, RichText of, String with, Optional<Link> working) {
    }
}
