package org.benchleaf.compose;

import java.util.List;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Findings;
import org.benchleaf.text.RichText;

/** A Findings as it stands on a page. */
final class FindingsExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new Findings(List.of(RichText.of("The surface of the sheet was acid, pH 4.4, before the treatment.")),
                "All the numbers, with how they were worked out", List.of(new KeyNumbersExample().get()));
    }
}
