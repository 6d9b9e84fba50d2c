package org.benchleaf.compose;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Hazard;
import org.benchleaf.page.HazardCard;

/** A HazardCard as it stands on a page. */
final class HazardCardExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new HazardCard(new Hazard("hazard-ethanol", "Ethanol", Optional.of("Danger"), List.of(),
                List.of(new Hazard.Statement("H225", "Highly flammable liquid and vapour.")),
                List.of(new Hazard.Statement("P210", "Keep away from heat.")),
                List.of(Fact.of("Flam. Liq. 2, H225", "harmonised")),
                List.of("The hazards of the thickener are not known: no sheet came with it.")),
                Map.of("does", "What to do", "grounds", "Why it is classified so", "unknown", "Hazards not known."));
    }
}
