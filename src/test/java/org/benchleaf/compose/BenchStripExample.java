package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.BenchStep;
import org.benchleaf.page.BenchStrip;
import org.benchleaf.page.BenchTimer;
import org.benchleaf.page.Block;
import org.benchleaf.page.DrawingRow;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Photo;
import org.benchleaf.page.Working;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** A BenchStrip as it stands on a page. */
final class BenchStripExample implements Supplier<Block> {

    @Override
    public Block get() {
        Working volume = (Working) new WorkingExample().get();
        return new BenchStrip(List.of(new BenchStep("step-wash", 6, "Washing", "after 2 h", "60 min",
                Optional.of(new BenchStep.Hold("Stop before: lowering", "Only the supervisor may let the work go on.", "supervisor",
                        Optional.of("the re-test of the stamp"), Optional.of("the sheet lies under film"),
                        Optional.of("The sheet may wait 10 min at most."), 600)),
                Optional.of(BriefingExample.caution()), List.of(BriefingExample.caution()), "Danger: vapour burns · goggles",
                List.of("Splash goggles, not spectacles."),
                RichText.of("Lower the sheet into the bath."), List.of(volume), List.of(Fact.of("Depth", "25 mm")),
                List.of(Fact.of("You should see", "The water turns straw yellow.")),
                List.of(RichText.of("The stamp is covered and was tested again.")),
                List.of(new BenchTimer("timer-wash-bath-1", "Bath 1", "20 min", 1200, "PT20M", BenchTimer.Kind.BATH,
                        Optional.of("timer-wash-bath-2"), Optional.empty(), 0),
                        new BenchTimer("timer-dry-change-5", "Blotter change 5", "overnight", 0, "", BenchTimer.Kind.CHANGE,
                                Optional.empty(), Optional.of("5 h"), 18000)),
                List.of("Look for colour at 1 min, and note what you see", "Done"), List.of(),
                Optional.of((Photo) new PhotoExample().get()),
                ((DrawingRow) new DrawingRowExample().get()).drawings(), List.of("wash", "bath"))),
                Words.in("en").group("strip"));
    }
}
