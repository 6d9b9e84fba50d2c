package org.benchleaf.page;

import java.util.List;

/**
 * Workings that stand close together, for numbers that a table above them tells.
 *
 * @param heading what they belong to
 * @param workings in order
 */
public record WorkingList(String heading, List<Working> workings) implements Block {

    public WorkingList {
        workings = List.copyOf(workings);
    }
}
