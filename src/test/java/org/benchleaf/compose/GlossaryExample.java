package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.compose.chart.DrawingPen;
import org.benchleaf.page.Block;
import org.benchleaf.page.Glossary;
import org.benchleaf.page.Link;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** A Glossary as it stands on a page. */
final class GlossaryExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new Glossary(List.of(Link.to("T", "#term-tideline")), List.of(new Glossary.Entry("term-tideline", "tideline", "tidelines",
                RichText.of("A brown edge that stays where wet paper met dry paper."),
                Optional.of(RichText.of("It holds acid and soluble colour.")),
                List.of(Link.to("washing", "#term-washing")), Optional.empty(),
                Optional.of(new DrawingPen().line("sheet", 20, 30, 220, 30).drawing("term-tideline-drawing", "tideline: a drawing",
                        "A sheet with a dark, wavy edge.", "From above.")))), Words.in("en").group("glossary"));
    }
}
