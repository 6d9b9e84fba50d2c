package org.benchleaf.compose;

import java.util.List;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Fact;
import org.benchleaf.page.RuleEntry;

/** A RuleEntry as it stands on a page. */
final class RuleEntryExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new RuleEntry("rule-dry-first", "Surface cleaning comes before the first moisture.", "dry-first",
                List.of(Fact.of("Weight", "stops the publishing of the case"), Fact.of("Why", "Moisture sets the dirt.")));
    }
}
