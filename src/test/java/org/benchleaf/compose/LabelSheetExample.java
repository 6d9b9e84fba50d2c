package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.LabelSheet;
import org.benchleaf.words.Words;

/** A LabelSheet as it stands on a page. */
final class LabelSheetExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new LabelSheet(List.of(new LabelSheet.Label(1, "Ethanol and water for misting",
                Optional.of("40 % v/v ethanol; the rest Deionised water"), Optional.of("28 d"), Optional.of(BriefingExample.hazard()),
                false, List.of()),
                new LabelSheet.Label(2, "Wheat starch paste", Optional.of("1 Wheat starch + 5 Deionised water, parts by mass"),
                        Optional.empty(),
                        Optional.empty(), true, List.of()),
                new LabelSheet.Label(2, "Borohydride in water", Optional.empty(), Optional.empty(), Optional.empty(), true,
                        List.of("It gives hydrogen."))), Words.in("en").group("label-sheet"));
    }
}
