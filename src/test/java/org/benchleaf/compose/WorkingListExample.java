package org.benchleaf.compose;

import java.util.List;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Working;
import org.benchleaf.page.WorkingList;

/** A WorkingList as it stands on a page. */
final class WorkingListExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new WorkingList("How each number was worked out: pH", List.of((Working) new WorkingExample().get()));
    }
}
