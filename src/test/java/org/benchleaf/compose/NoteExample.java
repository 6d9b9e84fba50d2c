package org.benchleaf.compose;

import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Note;
import org.benchleaf.text.RichText;

/** A Note as it stands on a page. */
final class NoteExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new Note("danger", "Danger", RichText.of("Vapour may catch fire."));
    }
}
