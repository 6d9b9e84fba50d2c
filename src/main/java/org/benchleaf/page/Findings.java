package org.benchleaf.page;

import java.util.List;
import org.benchleaf.text.RichText;

/**
 * What came of a treatment in sentences for readers outside the trade; the rest opens below them.
 *
 * @param says the sentences, in order
 * @param open what the closed part is called
 * @param more what stands in the closed part; empty if there is none
 */
public record Findings(List<RichText> says, String open, List<Block> more) implements Block {

    public Findings {
        says = List.copyOf(says);
        more = List.copyOf(more);
    }
}
