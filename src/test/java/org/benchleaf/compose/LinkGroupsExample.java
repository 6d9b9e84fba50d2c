package org.benchleaf.compose;

import java.util.List;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Link;
import org.benchleaf.page.LinkGroups;

/** A LinkGroups as it stands on a page. */
final class LinkGroupsExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new LinkGroups(List.of(new LinkGroups.Group("by-damage", "Damage", List.of(
                new LinkGroups.Entry(Link.to("tear", "browse/damage-tear.html"), "3 cases")))));
    }
}
