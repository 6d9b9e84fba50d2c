package org.benchleaf.compose;

import java.util.List;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Prose;
import org.benchleaf.page.Working;
import org.benchleaf.text.Inline;
import org.benchleaf.text.TextBlock;

/** A Prose as it stands on a page. */
final class ProseExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new Prose(List.of(
                new Prose.Passage(new TextBlock.Paragraph(List.of(new Inline.Text("The tray held "),
                        new Inline.WorkedNumber("working-wash-volume", "5.1\u202fL"), new Inline.Text(" of water."))),
                        List.of((Working) new WorkingExample().get())),
                Prose.Passage.of(TextBlock.ItemList.of(List.of(new TextBlock.Line(List.of(new Inline.Text("One"))),
                        new TextBlock.Line(List.of(new Inline.Text("Two"))))))));
    }
}
