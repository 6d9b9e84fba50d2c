package org.benchleaf.compose;

import java.util.List;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Link;
import org.benchleaf.page.TakeAlong;

/** A TakeAlong as it stands on a page. */
final class TakeAlongExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new TakeAlong(List.of(Link.to("Step sheet", "example/page.html")), "It does not change when the page does.");
    }
}
