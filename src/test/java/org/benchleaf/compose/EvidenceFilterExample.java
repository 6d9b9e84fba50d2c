package org.benchleaf.compose;

import java.util.List;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.EvidenceFilter;
import org.benchleaf.words.Words;

/** An EvidenceFilter as it stands on a page. */
final class EvidenceFilterExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new EvidenceFilter(List.of(new EvidenceFilter.Choice("only-paper", "Paper", List.of(
                new EvidenceFilter.Value("paper-rag", "rag"), new EvidenceFilter.Value("paper-wood-pulp", "wood pulp")))),
                Words.in("en").group("evidence-filter"));
    }
}
