package org.benchleaf.derive.figure;

import org.benchleaf.model.StatedValue;
import org.benchleaf.quantity.Unit;

/** What a report states of a result on one side of the treatment, which a story cites as it was given. */
public sealed interface AsStated {

    /**
     * A number with the words of its form: "about 8", "less than 5".
     *
     * @param unit of the number
     */
    record Value(StatedValue value, Unit unit) implements AsStated {
    }

    /** A rank or other words. */
    record InWords(String text) implements AsStated {
    }
}
