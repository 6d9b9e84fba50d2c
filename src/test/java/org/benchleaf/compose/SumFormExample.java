package org.benchleaf.compose;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Link;
import org.benchleaf.page.SumForm;
import org.benchleaf.words.Words;

/** A SumForm as it stands on a page. */
final class SumFormExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new SumForm("bath", "Volume of a bath", "V = (h + 2 m) (w + 2 m) d", "rectangular trays",
                Link.to("Formula and sources", "methods.html#method-bath"), List.of(
                new SumForm.Field("depth", "depth", "from 0 mm", Optional.of("25 mm"), "25 mm", Map.of(),
                        List.of("mm", "cm"), "mm", true),
                new SumForm.Field("covered", "covered", "yes, no", Optional.of("no"), "no", Map.of("yes", "yes", "no", "no"), List.of(),
                        "", false)), Words.in("en").group("sums"));
    }
}
