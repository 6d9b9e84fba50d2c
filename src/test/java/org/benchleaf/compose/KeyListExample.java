package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.KeyList;
import org.benchleaf.words.Words;

/** A KeyList as it stands on a page. */
final class KeyListExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new KeyList(List.of(
                new KeyList.Entry("level", true, "For whom the step sheet is written.",
                        List.of(new KeyList.Word("foundation", Optional.of("for those who begin")),
                                KeyList.Word.plain("advanced")), Optional.of("foundation")),
                new KeyList.Entry("side", false, "Which side shows it.", List.of(KeyList.Word.plain("recto"), KeyList.Word.plain("verso")),
                        Optional.empty()),
                new KeyList.Entry("object.size", false, "Its size.", List.of(), Optional.empty())),
                Words.in("en").group("key-list"));
    }
}
