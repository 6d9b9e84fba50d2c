package org.benchleaf.compose;

import java.util.function.Supplier;
import org.benchleaf.page.BenchDesk;
import org.benchleaf.page.Block;
import org.benchleaf.words.Words;

/** A BenchDesk as it stands on a page. */
final class BenchDeskExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new BenchDesk("benchleaf.example.tide-table.1", Words.in("en").group("desk"));
    }
}
