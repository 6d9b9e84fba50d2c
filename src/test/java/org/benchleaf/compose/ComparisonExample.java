package org.benchleaf.compose;

import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Comparison;
import org.benchleaf.page.Photo;
import org.benchleaf.words.Words;

/** A Comparison as it stands on a page. */
final class ComparisonExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new Comparison((Photo) new PhotoExample().get(),
                new Photo("tide-table", "after", "The same sheet, lighter and flat; the tears are closed.",
                        "After treatment. The tideline is paler, not gone.", "Seen: recto, normal light.",
                        "Picture: the studio, CC0-1.0.", Optional.of("After"), true),
                "The same view twice: recto (front), normal light.", Words.in("en").group("comparison"));
    }
}
