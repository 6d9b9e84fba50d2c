package org.benchleaf.compose;

import java.util.function.Supplier;
import org.benchleaf.page.BenchSums;
import org.benchleaf.page.Block;
import org.benchleaf.words.Words;

/** A BenchSums as it stands on a page. */
final class BenchSumsExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new BenchSums("figures.js", Words.in("en").group("bench-sums"));
    }
}
