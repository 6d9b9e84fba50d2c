package org.benchleaf.page;

import java.util.List;
import java.util.Map;

/**
 * Places to sign for each hold point.
 *
 * @param caption what is signed for
 * @param rows the hold points
 * @param words fixed labels
 */
public record SignOff(String caption, List<Row> rows, Map<String, String> words) implements Block {

    public SignOff {
        rows = List.copyOf(rows);
    }

    /** One hold point: its step, what must not begin, what is looked at, who signs. */
    public record Row(Link step, String before, String look, String who) {
    }
}
