package org.benchleaf.read;

import java.util.Arrays;
import org.benchleaf.message.Place;
import org.benchleaf.message.SourceText;

/** Turns offsets into a file's text into places: line and column. */
final class Lines {

    private final SourceText source;
    private final String text;
    private final int[] starts;

    Lines(SourceText source, String text) {
        this.source = source;
        this.text = text;
        int[] found = new int[16];
        int count = 1;
        for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', end + 1)) {
            if (count == found.length) {
                found = Arrays.copyOf(found, count * 2);
            }
            found[count++] = end + 1;
        }
        this.starts = Arrays.copyOf(found, count);
    }

    /** The same lines, shown in messages as another text of the same shape. */
    Lines shownAs(SourceText shown) {
        return new Lines(shown, text);
    }

    /** The text as messages may show it. */
    SourceText shown() {
        return source;
    }

    String file() {
        return source.file();
    }

    /** The place from one offset up to another; the caret never runs past the end of the line. */
    Place place(int from, int to, String pointer) {
        int line = lineOf(from);
        int lineEnd = text.indexOf('\n', from);
        int end = Math.min(to, lineEnd < 0 ? text.length() : lineEnd);
        int trimmed = from + text.substring(from, Math.max(from, end)).stripTrailing().length();
        return new Place(source, line + 1, from - starts[line] + 1, Math.max(1, trimmed - from), pointer);
    }

    private int lineOf(int offset) {
        int found = Arrays.binarySearch(starts, offset);
        return found >= 0 ? found : -found - 2;
    }
}
