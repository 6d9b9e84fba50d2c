package org.benchleaf.page;

import java.util.List;

/**
 * The numbers that sum up a treatment, each opening to its working.
 *
 * @param numbers in order
 */
public record KeyNumbers(List<Item> numbers) implements Block {

    public KeyNumbers {
        numbers = List.copyOf(numbers);
    }

    /**
     * A number and what it says, one sentence; what must be said beside it.
     *
     * @param number its working, or the number with a link to the working that the page shows elsewhere
     * @param says what it says
     * @param cautions what must be said beside it
     */
    public record Item(Block number, String says, List<String> cautions) {
        public Item {
            cautions = List.copyOf(cautions);
        }
    }
}
