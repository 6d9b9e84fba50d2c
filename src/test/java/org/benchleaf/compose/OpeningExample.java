package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Opening;

/** A Opening as it stands on a page. */
final class OpeningExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new Opening(Optional.of("Case study"), "A tide table that had met the tide",
                Optional.of("A brown, brittle sheet is washed and mended."),
                List.of(Fact.of("Size", "412 mm × 298 mm")),
                Optional.of(new Opening.Notice("Please note", "This is not an instruction.")));
    }
}
