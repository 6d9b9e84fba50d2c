package org.benchleaf.compose;

import java.util.List;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Link;
import org.benchleaf.page.SignOff;
import org.benchleaf.words.Words;

/** A SignOff as it stands on a page. */
final class SignOffExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new SignOff("Hold points to sign", List.of(new SignOff.Row(Link.to("Step 6: Washing", "#content"),
                "lowering", "the re-test of the stamp", "supervisor")), Words.in("en").group("sign"));
    }
}
