package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Briefing;
import org.benchleaf.page.Caution;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Hazard;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** A Briefing as it stands on a page. */
final class BriefingExample implements Supplier<Block> {

    static final String FLAME = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 200 200\" role=\"img\" "
            + "aria-label=\"flame\"><path d=\"M100 6 194 100 100 194 6 100Z\" fill=\"#fff\" stroke=\"#d7141a\" "
            + "stroke-width=\"8\"/></svg>";

    @Override
    public Block get() {
        return new Briefing("briefing", "Before the first step", "Read this together and ask.", List.of(caution()), List.of(caution()),
                List.of(Fact.of("Splash goggles, not spectacles.", "step 6")), List.of(hazard()),
                List.of(Fact.of("In the eyes", "Rinse at once for 15 min and call for help.")),
                List.of(Fact.of("Ethanol and water", "Collect in the closed can for solvents.")),
                "Check the safety data sheet and local rules.",
                Optional.of(new Briefing.Tick("tick-briefing", "Read together.")), Words.in("en").group("briefing"));
    }

    static Caution caution() {
        return new Caution("danger", "Danger", "vapour burns", RichText.of("The vapour burns."), RichText.of("Put out every flame."));
    }

    static Hazard hazard() {
        return new Hazard("hazard-mist", "Ethanol and water for misting", Optional.of("Warning"),
                List.of(new Hazard.Pictogram("GHS02", "flame", new Hazard.Drawing(FLAME, "flame, GHS02"))),
                List.of(new Hazard.Statement("H226", "Flammable liquid and vapour.")),
                List.of(new Hazard.Statement("P210", "Keep away from heat.")),
                List.of(Fact.of("Flam. Liq. 3", "flash point 26 °C")), List.of("What is in the thickener is not known."));
    }
}
