package org.benchleaf.compose;

import java.util.function.Supplier;

/** A Note as it stands on a page. */
final class NoteExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new Note("danger", "Danger", RichText.of("Vapour may catch fire."));
    }
}
