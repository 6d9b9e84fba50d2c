package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.BenchScreen;
import org.benchleaf.page.BenchStep;
import org.benchleaf.page.BenchTimer;
import org.benchleaf.page.BenchView;
import org.benchleaf.page.Block;
import org.benchleaf.page.Fact;
import org.benchleaf.words.Words;

/** A BenchView as it stands on a page. */
final class BenchViewExample implements Supplier<Block> {

    @Override
    public Block get() {
        BenchStep.Hold hold = new BenchStep.Hold("Stop before: lowering", "Only the supervisor may let the work go on.",
                "supervisor", Optional.of("the re-test of the stamp"), Optional.of("the sheet lies under film"),
                Optional.of("The sheet may wait 10 min at most."), 600);
        BenchScreen stop = new BenchScreen("step-wash", "6. Washing", Optional.of("Hold point"), Optional.of(hold), "", false,
                Optional.empty(), Optional.empty(), List.of(), List.of(), Optional.empty(),
                Optional.empty(), List.of(), List.of(), "", List.of(),
                List.of(), false,
                List.of(), false, false);
        BenchScreen bath = new BenchScreen("step-wash", "6. Washing", Optional.of("Bath 1"), Optional.empty(),
                "Lower the sheet into the bath.", true, Optional.of(Fact.of("Volume", "6 L")),
                Optional.of(Fact.of("You should see", "The water turns straw yellow.")),
                List.of(Fact.of("Watch", "The stamp.")),
                List.of(new BenchScreen.Look(Fact.of("Look", "colour at 1 min"), 60)), Optional.empty(),
                Optional.of(Fact.of("If not", "Lift the sheet out.")),
                List.of(new BenchScreen.Clock("timer-wash-bath-1", BenchTimer.Kind.BATH, 0, Optional.of("Bath 1"))),
                List.of(BriefingExample.caution()), "Danger: vapour burns · splash goggles", List.of("Splash goggles."),
                List.of(Fact.of("Watch", "the stamp")),
                true,
                List.of(new BenchScreen.Note("readings", 1, "pH fresh", "pH, fresh", "pH", "",
                        Optional.of(new BenchScreen.Range(8.4, 8.6, "pH 8.4–8.6")), Optional.empty()),
                        new BenchScreen.Note("readings", 1, "colour", "Colour", "", "", Optional.empty(),
                                Optional.of(new BenchScreen.Sight(Optional.of("straw yellow"), "two baths in a row stay clear")))),
                true, true);
        return new BenchView("1a2b", "tide-table", "17:30",
                List.of(new BenchView.Stage("step-wash", "wash", "6. Washing", 3600, List.of(), 0)), List.of(stop, bath),
                Words.in("en").group("bench-view"));
    }
}
