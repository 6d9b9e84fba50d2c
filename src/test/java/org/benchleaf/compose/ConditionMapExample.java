package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.ConditionMap;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** A ConditionMap as it stands on a page. */
final class ConditionMapExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new ConditionMap(
                Optional.of(new ConditionMap.Underlay("tide-table", "before", -290, -290, 3560, 4900)), "Where the damage is",
                "An outline of the sheet with numbered marks: 1 tear.",
                2980, 4120, List.of(new ConditionMap.Mark(1, 2680, 1300)),
                List.of(new ConditionMap.Entry(1, RichText.of("tear"), "right edge", "moderate, 64 mm", true),
                        new ConditionMap.Entry(2, RichText.of("discoloration"), "overall", "marked", false)),
                Words.in("en").group("condition-map"));
    }
}
