package org.benchleaf.compose;

import java.util.Map;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.KeptOffline;

/** A KeptOffline as it stands on a page. */
final class KeptOfflineExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new KeptOffline(Map.of("kept", "Kept for offline: [n] of [all] cases, as of [day]."));
    }
}
