package org.benchleaf.page;

import java.util.List;
import java.util.Optional;

/**
 * What one solution or material can do, as a sheet or a label tells it.
 *
 * @param anchor where links to it arrive on its page
 * @param name of the solution or material
 * @param signal {@code Danger} or {@code Warning}; empty if none
 * @param pictograms with their names in words
 * @param says hazard statements
 * @param does precautionary statements
 * @param grounds how each class came about
 * @param unknown what is not known and what to do about it, sentences; empty if everything is known
 */
public record Hazard(String anchor, String name, Optional<String> signal, List<Pictogram> pictograms,
        List<Statement> says, List<Statement> does, List<Fact> grounds, List<String> unknown) {

    public Hazard {
        pictograms = List.copyOf(pictograms);
        says = List.copyOf(says);
        does = List.copyOf(does);
        grounds = List.copyOf(grounds);
        unknown = List.copyOf(unknown);
    }

    /** A pictogram: its code, its symbol in words and the drawing. */
    public record Pictogram(String code, String name, Drawing drawing) {
    }

    /**
     * A drawing from the program's own tables.
     *
     * @param svg as the table has it
     * @param label symbol and code, for readers who do not see it
     */
    public record Drawing(String svg, String label) {
    }

    /** An official statement with its code. */
    public record Statement(String code, String text) {
    }
}
