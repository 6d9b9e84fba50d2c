package org.benchleaf.compose;

import java.util.List;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;

/** A Facts as it stands on a page. */
final class FactsExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new Facts(List.of(Fact.of("Object", "broadside, letterpress"), Fact.of("Sheet", "wood pulp, 82 g/m²")));
    }
}
