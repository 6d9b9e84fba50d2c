package org.benchleaf.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.text.RichText;

/**
 * Numbered marks over the sheet, and the list that tells what each number means.
 *
 * @param under the picture under the marks; without one the marks stand on an outline of the sheet
 * @param title of the drawing, for readers who do not see it
 * @param description of the drawing
 * @param width of the sheet in tenths of a millimetre, the drawing's own unit
 * @param height of the sheet in the same unit
 * @param marks where the numbers stand
 * @param entries what was found, numbered; those without a place come last
 * @param words fixed labels
 */
public record ConditionMap(Optional<Underlay> under, String title, String description, int width, int height,
        List<Mark> marks, List<Entry> entries, Map<String, String> words) implements Block {

    public ConditionMap {
        marks = List.copyOf(marks);
        entries = List.copyOf(entries);
    }

    /** A picture of the case, and where its corner and its far edges lie in the drawing's units. */
    public record Underlay(String caseId, String id, int x, int y, int width, int height) {
    }

    /** A number and where it stands from the upper left corner. */
    public record Mark(int number, int x, int y) {
    }

    /** A damage in words, with its number. */
    public record Entry(int number, RichText what, String where, String how, boolean marked) {
    }
}
