package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Link;
import org.benchleaf.page.StepOutline;
import org.benchleaf.text.RichText;

/** A StepOutline as it stands on a page. */
final class StepOutlineExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new StepOutline(List.of(
                new StepOutline.Item("Washing", RichText.of("Lower the sheet into the bath."), Optional.of("1 h"),
                        Optional.of(Link.to("Open the step: Washing", "steps.html#step-wash"))),
                new StepOutline.Item("Drying", RichText.of("Lay the sheet between blotters."), Optional.empty(),
                        Optional.empty())), true);
    }
}
