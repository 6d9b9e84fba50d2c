package org.benchleaf.compose;

import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Photo;

/** A Photo as it stands on a page. */
final class PhotoExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new Photo("tide-table", "before", "A brown sheet with a dark wavy stain across its lower third.",
                "Before treatment. Look for the tideline.", "Seen: recto, normal light.", "Picture: the studio, CC0-1.0.",
                Optional.of("Before"), true);
    }
}
