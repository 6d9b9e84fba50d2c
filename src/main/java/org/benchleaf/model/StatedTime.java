package org.benchleaf.model;

import org.benchleaf.model.StatedValue.Form;
import org.benchleaf.quantity.Quantity;

/**
 * How long something takes, as it is told: {@code 20 min to 40 min}, {@code about 3 h}, {@code less than 10 min}, {@code more than 2 h};
 * or which share of another time.
 *
 * @param form what is told of the time
 * @param stated the number or both ends of a range, without the words of its form
 * @param span the time for a sum, with its shortest and its longest. "Less than" begins at nothing and counts in full where one number
 *     is needed, so that no plan is too short; "more than" is what it takes at least
 */
public record StatedTime(Form form, Quantity stated, Quantity span) {

    /** A time or a range as it is written. */
    public static StatedTime of(Quantity time) {
        return new StatedTime(time.spread() == Quantity.Spread.RANGE ? Form.RANGE : Form.ONE, time, time);
    }

    /**
     * A time that is told with a word.
     *
     * @param formulary tells how far "about" may lie off
     */
    public static StatedTime told(Form form, Quantity stated, Formulary formulary) {
        return new StatedTime(form, stated, switch (form) {
            case ABOUT -> stated.about(formulary.constant("about-at-least").value(), formulary.constant("about-at-most").value());
            case LESS_THAN -> Quantity.between(0, stated.high(), stated.high(), stated.unit());
            default -> stated;
        });
    }

    /** Whether nobody tells how long it took at most. */
    public boolean isOpen() {
        return form == Form.MORE_THAN;
    }
}
