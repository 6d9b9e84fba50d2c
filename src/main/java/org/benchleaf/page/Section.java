package org.benchleaf.page;

import java.util.List;
import java.util.Optional;

/**
 * A part of a page under a heading of the second level.
 *
 * @param id anchor of the heading
 * @param heading its text
 * @param lead one line below the heading
 * @param blocks what stands in it
 */
public record Section(String id, String heading, Optional<String> lead, List<Block> blocks) implements Block {

    public Section {
        blocks = List.copyOf(blocks);
    }
}
