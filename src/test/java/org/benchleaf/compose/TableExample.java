package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Link;
import org.benchleaf.page.Table;
import org.benchleaf.text.RichText;

/** A Table as it stands on a page. */
final class TableExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new Table("readings", "pH before and after", List.of(new Table.Column("Place", false),
                new Table.Column("Before", true), new Table.Column("After", true)),
                List.of(List.of(RichText.of("margin head"), RichText.of("4.4"), RichText.of("7.3"))),
                Optional.of(Link.to("The readings as a table file (CSV)", "readings.csv")));
    }
}
