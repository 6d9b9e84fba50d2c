package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.compose.part.PassageMaker;
import org.benchleaf.page.Block;
import org.benchleaf.page.Citation;
import org.benchleaf.page.Markup;
import org.benchleaf.page.Working;
import org.benchleaf.quantity.Amount;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** A Working as it stands on a page. */
final class WorkingExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new Working("wash.volume", "working-wash-volume", "Water for one bath", new Amount("5.1", "L"), "Bath",
                "../../methods.html#method-bath",
                Optional.of(new Markup("<mi>V</mi><mo>=</mo><mi>a</mi><mo>·</mo><mi>b</mi><mo>·</mo><mi>d</mi>")),
                "V = a · b · d", Optional.empty(), List.of(new Working.Given("Depth", "25 mm", "case file", Optional.empty()),
                        new Working.Given("Area", "0.2 m²", "Area of the bath", Optional.of("#working-wash-area"))),
                Optional.of("5.09375 L"), "What was put in carries no spread, so none is told.",
                List.of(new Citation(Optional.of(3), "Tarn Quay Paper Studio 2026", "../../sources.html#source-house-notebook")),
                List.of("The sheet itself takes up a little more."),
                Optional.of(RichText.of("[3] Tarn Quay Paper Studio 2026, table 1: ").then(PassageMaker.quoted("about five litres"))),
                true, Words.in("en").group("working"));
    }
}
