package org.benchleaf.privacy;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Tells the line and the column of places in a text; counts its lines only when it is asked. */
final class LineCount {

    private final String text;
    private int[] starts;

    LineCount(String text) {
        this.text = text;
    }

    /** The line of a place, counted from 1. */
    int lineOf(int offset) {
        if (starts == null) {
            starts = IntStream.concat(IntStream.of(0),
                    IntStream.range(0, text.length()).filter(at -> text.charAt(at) == '\n').map(at -> at + 1)).toArray();
        }
        int found = Arrays.binarySearch(starts, offset);
        return found >= 0 ? found + 1 : -found - 1;
    }

    /** The column of a place on its line, counted from 1. */
    int columnOf(int offset) {
        // First of all, since it finds where the lines start.
        int line = lineOf(offset);
        return offset - starts[line - 1] + 1;
    }
}
