package org.benchleaf.compose;

import java.util.stream.Stream;
import org.benchleaf.page.Block;
import org.benchleaf.page.Findings;
import org.benchleaf.page.Page;
import org.benchleaf.page.Section;

/** Every block of a page, those within sections too, from top to bottom. */
public final class AllBlocks {

    private AllBlocks() {
    }

    public static Stream<Block> of(Page page) {
        return page.blocks().stream().flatMap(AllBlocks::within);
    }

    private static Stream<Block> within(Block block) {
        return block instanceof Section section ? section.blocks().stream().flatMap(AllBlocks::within)
                : block instanceof Findings findings ? Stream.concat(Stream.of(block), findings.more().stream()) : Stream.of(block);
    }
}
