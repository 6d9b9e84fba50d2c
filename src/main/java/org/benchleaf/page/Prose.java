package org.benchleaf.page;

import java.util.List;
import org.benchleaf.text.TextBlock;

/**
 * Running text, in passages so that a number's working can stand right below the paragraph that tells it.
 *
 * @param passages in order
 */
public record Prose(List<Passage> passages) implements Block {

    public Prose {
        passages = List.copyOf(passages);
    }

    /** A paragraph, list or table with the workings of the numbers that it tells for the first time. */
    public record Passage(TextBlock text, List<Working> workings) {
        public Passage {
            workings = List.copyOf(workings);
        }

        /** A passage that tells no number for the first time. */
        public static Passage of(TextBlock text) {
            return new Passage(text, List.of());
        }

        /** A paragraph of plain words. */
        public static Passage paragraph(String words) {
            return of(TextBlock.Paragraph.of(words));
        }
    }
}
