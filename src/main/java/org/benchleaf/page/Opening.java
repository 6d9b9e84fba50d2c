package org.benchleaf.page;

import java.util.List;
import java.util.Optional;

/**
 * The head of a page: its only heading of the first level, what it is about, and a few facts.
 *
 * @param kicker the kind of page, above the heading
 * @param heading the heading
 * @param summary one or two sentences
 * @param facts short facts, such as level and size
 * @param notice what must be known before reading on; shown with the word and shape of care
 */
public record Opening(Optional<String> kicker, String heading, Optional<String> summary, List<Fact> facts,
        Optional<Notice> notice) implements Block {

    public Opening {
        facts = List.copyOf(facts);
    }

    /** An opening without facts and notice. */
    public static Opening plain(String heading, String summary) {
        return new Opening(Optional.empty(), heading, Optional.of(summary), List.of(), Optional.empty());
    }

    /** A standing notice: its word, such as "Please note", and its text. */
    public record Notice(String word, String text) {
    }
}
