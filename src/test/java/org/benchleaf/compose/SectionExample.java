package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Section;

/** A Section as it stands on a page. */
final class SectionExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new Section("object", "The object", Optional.of("As it came."),
                List.of(new FactsExample().get()));
    }
}
