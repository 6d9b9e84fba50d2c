package org.benchleaf.compose;

import java.util.List;
import java.util.function.Supplier;

/** A Prose as it stands on a page. */
final class ProseExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new Prose(List.of(
                new Prose.Passage(new Html("<p>The tray held <a class=\"number\" href=\"#working-wash-volume\"><bdi>5.1 L</bdi></a>"
                        + " of water.</p>"), List.of((Working) new WorkingExample().get())),
                new Prose.Passage(new Html("<ul><li>One</li><li>Two</li></ul>"), List.of())));
    }
}
