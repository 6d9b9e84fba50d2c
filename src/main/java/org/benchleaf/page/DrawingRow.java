package org.benchleaf.page;

import java.util.List;

/**
 * Line drawings beside each other where there is room, each with a text of the same content.
 *
 * @param drawings in the order in which hands need them
 */
public record DrawingRow(List<Chart.Drawing> drawings) implements Block {

    public DrawingRow {
        drawings = List.copyOf(drawings);
    }
}
