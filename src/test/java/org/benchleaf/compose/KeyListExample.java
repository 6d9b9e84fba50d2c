package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** A KeyList as it stands on a page. */
final class KeyListExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new KeyList(List.of(
                new KeyList.Entry("level", true, "For whom the step sheet is written.",
                        List.of("foundation", "intermediate", "advanced"), Optional.of("foundation")),
                new KeyList.Entry("object.size", false, "Its size.", List.of(), Optional.empty())),
                Words.in("en").group("key-list"));
    }
}
