package org.benchleaf.compose;

import java.util.stream.Stream;

/** Every block of a page, those within sections too, from top to bottom. */
final class AllBlocks {

    private AllBlocks() {
    }

    static Stream<Block> of(Page page) {
        return page.blocks().stream().flatMap(AllBlocks::within);
    }

    private static Stream<Block> within(Block block) {
        return block instanceof Section section ? section.blocks().stream().flatMap(AllBlocks::within)
                : block instanceof Findings findings ? Stream.concat(Stream.of(block), findings.more().stream()) : Stream.of(block);
    }
}
