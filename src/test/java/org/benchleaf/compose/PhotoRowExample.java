package org.benchleaf.compose;

import java.util.List;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Photo;
import org.benchleaf.page.PhotoRow;

/** A PhotoRow as it stands on a page. */
final class PhotoRowExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new PhotoRow(List.of((Photo) new PhotoExample().get()));
    }
}
