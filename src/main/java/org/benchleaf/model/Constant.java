package org.benchleaf.model;

import java.util.List;
import org.benchleaf.quantity.Quantity;

/**
 * A number that cases do not state: what is usual, what is chosen, where a limit lies.
 *
 * @param name the name by which code asks for it, such as {@code wet-solids}
 * @param about what it is, in words
 * @param value the number with its spread; without spread where it is chosen or defined
 * @param sources keys of its sources
 */
public record Constant(String name, String about, Quantity value, List<String> sources) {

    public Constant {
        sources = List.copyOf(sources);
    }
}
