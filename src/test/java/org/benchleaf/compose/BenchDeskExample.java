package org.benchleaf.compose;

import java.util.function.Supplier;

/** A BenchDesk as it stands on a page. */
final class BenchDeskExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new BenchDesk("benchleaf.example.tide-table.1", Words.in("en").group("desk"));
    }
}
