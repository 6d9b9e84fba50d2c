package org.benchleaf.compose;

import java.util.List;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.KeyNumbers;
import org.benchleaf.page.Working;

/** A KeyNumbers as it stands on a page. */
final class KeyNumbersExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new KeyNumbers(List.of(new KeyNumbers.Item((Working) new WorkingExample().get(), "Water for one bath",
                List.of("Read on the surface; it tells nothing of the inside of the sheet."))));
    }
}
