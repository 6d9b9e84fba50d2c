package org.benchleaf.calculate;

import java.util.ArrayList;
import java.util.List;

/** Lines of cells parted by tabs, in which calculations and pages talk to each other. */
public final class Cells {

    private Cells() {
    }

    /** The lines of a text that are not empty, each in its cells. */
    public static List<List<String>> lines(String text) {
        return cut(text, '\n').stream().filter(line -> !line.isEmpty()).map(line -> cells(line, '\t')).toList();
    }

    /** The parts between signs; none of an empty text. */
    static List<String> cut(String text, char sign) {
        return text.isEmpty() ? List.of() : cells(text, sign);
    }

    private static List<String> cells(String text, char sign) {
        List<String> cells = new ArrayList<>();
        int from = 0;
        for (int end = text.indexOf(sign); end >= 0; end = text.indexOf(sign, from)) {
            cells.add(text.substring(from, end));
            from = end + 1;
        }
        cells.add(text.substring(from));
        return cells;
    }
}
