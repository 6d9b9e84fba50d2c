package org.benchleaf.compose;

import java.util.List;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Link;
import org.benchleaf.page.LinkList;

/** A LinkList as it stands on a page. */
final class LinkListExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new LinkList(List.of(new LinkList.Entry(Link.to("Deionised water", "deionised-water.html"),
                "Water from which salts have been taken out.")));
    }
}
