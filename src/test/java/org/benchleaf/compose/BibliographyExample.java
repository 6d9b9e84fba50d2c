package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.Bibliography;
import org.benchleaf.page.Block;
import org.benchleaf.page.Link;
import org.benchleaf.words.Words;

/** A Bibliography as it stands on a page. */
final class BibliographyExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new Bibliography(true, List.of(new Bibliography.Entry("source-house-notebook", "Tarn Quay Paper Studio", "2026",
                "House notebook, recipes", "invented for the demo",
                Optional.of("https://tarn-quay.example/notebook"), "read",
                List.of(Link.to("A tide table that had met the tide", "cases/tide-table/index.html")), "and 3 cases more")),
                Words.in("en").group("sources"));
    }
}
