package org.benchleaf.model;

import java.util.Optional;
import org.benchleaf.quantity.Decimal;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * A measured value as a report states it, where the single readings are not given.
 *
 * @param form what is stated
 * @param value the number, or both ends of a range; known to its last digit
 * @param readings how many readings a mean is of; empty if nobody recorded it
 * @param deviation the standard deviation of the readings; empty if it is not given
 * @param written the number as it was written, without the words of its form
 */
public record StatedValue(Form form, Quantity value, Optional<Integer> readings, Optional<Quantity> deviation,
        String written) {

    /** What a report states of a value. */
    public enum Form {
        ONE, ABOUT, LESS_THAN, MORE_THAN, RANGE, MEAN
    }

    /** A number or a range as it is written. */
    public static StatedValue of(Quantity value, String written) {
        return new StatedValue(value.spread() == Quantity.Spread.RANGE ? Form.RANGE : Form.ONE, value, Optional.empty(), Optional.empty(),
                written);
    }

    /** The number as it was written, with the unit behind it where it was written without; a pH and a count have none. */
    public String withUnit(Unit unit) {
        boolean bare = written.chars().allMatch(sign -> sign < 'A') && !unit.symbol().isEmpty() && unit != Unit.PH && unit != Unit.COUNT;
        return bare ? written + " " + unit.symbol() : written;
    }

    /** The value with the words of its form, as a case file has it: "about 8", "mean 7.2, n = 5, sd 0.1". */
    public String told(Unit unit) {
        String word = switch (form) {
            case ONE, RANGE -> "";
            case ABOUT -> "about ";
            case LESS_THAN -> "less than ";
            case MORE_THAN -> "more than ";
            case MEAN -> "mean ";
        };
        return word + withUnit(unit) + readings.map(count -> ", n = " + count).orElse("")
                + deviation.map(sd -> ", sd " + Decimal.text(sd.value())).orElse("");
    }

    /** The number or range for a sum; of "about 8" what rounds to it, 7.5 to 8.5; empty where one end is open. */
    public Optional<Quantity> forSums() {
        if (form == Form.LESS_THAN || form == Form.MORE_THAN) {
            return Optional.empty();
        }
        return Optional.of(form == Form.ABOUT && value.spread() == Quantity.Spread.RESOLUTION ? value.rounding() : value.asStated());
    }

    /** Whether it is a number from which another may be taken away. */
    public boolean isNumber() {
        return form == Form.ONE || form == Form.MEAN;
    }
}
