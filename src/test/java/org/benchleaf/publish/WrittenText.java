package org.benchleaf.publish;

import java.util.List;
import java.util.stream.Collectors;
import org.benchleaf.text.RichText;
import org.benchleaf.text.TextBlock;

/** Running text as a page has it, for tests of other packages. */
public final class WrittenText {

    private WrittenText() {
    }

    /** The HTML of blocks, each on lines of its own. */
    public static String of(List<TextBlock> blocks) {
        return blocks.stream().map(HtmlWriter::of).collect(Collectors.joining("\n"));
    }

    /** The HTML of a text. */
    public static String of(RichText text) {
        return HtmlWriter.of(text.parts());
    }
}
