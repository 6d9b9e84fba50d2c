package org.benchleaf.compose;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Meaning;
import org.benchleaf.text.RichText;

/** A Meaning as it stands on a page. */
final class MeaningExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new Meaning(List.of(RichText.of("On average 2.8 higher after the treatment.")),
                List.of("Read on the surface; it tells nothing of the inside of the sheet."),
                Map.of("says", "What it says", "limits", "What it does not show"));
    }
}
