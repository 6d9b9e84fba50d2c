package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Link;
import org.benchleaf.page.RecipeCard;
import org.benchleaf.page.Working;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** A RecipeCard as it stands on a page. */
final class RecipeCardExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new RecipeCard("prepare-mist", "Ethanol and water for misting",
                Optional.of((Working) new WorkingExample().get()), Optional.of("Make this fresh 3 times."),
                Optional.of("Begin 3 h before it is needed."),
                List.of(new RecipeCard.Measure("21 mL", RichText.of("Ethanol, 96 % v/v"),
                        "25 mL measuring cylinder, within ± 0.3 mL",
                        Optional.of(Link.to("Working: ethanol", "#working-wash-volume")))),
                List.of(RichText.of("Measure the ethanol under extraction.")), List.of(Fact.of("Keeps", "28 d")),
                List.of(BriefingExample.caution()), List.of("Splash goggles, not spectacles."),
                Optional.of(BriefingExample.hazard()), List.of(),
                Words.in("en").group("recipe"));
    }
}
