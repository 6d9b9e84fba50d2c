package org.benchleaf.compose;

import java.util.List;

/**
 * Running text, in passages so that a number's working can stand right below the paragraph that tells it.
 *
 * @param passages in order
 */
public record Prose(List<Passage> passages) implements Block {

    public Prose {
        passages = List.copyOf(passages);
    }

    /** A paragraph, list or table with the workings of the numbers that it tells for the first time. */
    public record Passage(Html html, List<Working> workings) {
        public Passage {
            workings = List.copyOf(workings);
        }
    }
}
