package org.benchleaf.page;

import java.util.List;
import java.util.Optional;
import org.benchleaf.text.RichText;

/**
 * What was done, one line a step.
 *
 * @param steps in order
 * @param numbered whether they followed one another in this order
 */
public record StepOutline(List<Item> steps, boolean numbered) implements Block {

    public StepOutline {
        steps = List.copyOf(steps);
    }

    /** One step: its kind, what is done, how long it takes, and the way to it on the step sheet. */
    public record Item(String kind, RichText instruction, Optional<String> takes, Optional<Link> more) {
    }
}
