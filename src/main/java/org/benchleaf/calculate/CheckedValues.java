package org.benchleaf.calculate;

import java.util.List;
import org.benchleaf.model.CheckValue;
import org.benchleaf.model.CheckValues;

/** Holds every calculation against the values that others published for it. */
public final class CheckedValues {

    /**
     * One comparison.
     *
     * @param value the published value
     * @param obtained what our calculation gives, in the output's unit, or a word; the reason if it gives nothing
     * @param difference how far the two lie apart, without sign; 0 or infinite where words are compared
     * @param agrees whether that is within the allowed difference
     */
    public record Compared(CheckValue value, String obtained, double difference, boolean agrees) {
    }

    private CheckedValues() {
    }

    /** The comparisons of one calculation, in the order of its file. */
    public static List<Compared> of(Calculations calculations, CheckValues values) {
        return values.rows().stream().map(value -> of(calculations, value)).toList();
    }

    private static Compared of(Calculations calculations, CheckValue value) {
        Outcome outcome = calculations.work(value.calculation(), value.inputs());
        if (outcome instanceof Outcome.Refused refused) {
            return said(value, "refused", refused.refusals().get(0).sentence());
        }
        Outcome.Worked worked = (Outcome.Worked) outcome;
        if (worked.words().containsKey(value.output())) {
            String word = worked.words().get(value.output());
            return said(value, word, word);
        }
        if (worked.withheld().containsKey(value.output())) {
            return said(value, "withheld", worked.withheld().get(value.output()).english());
        }
        if (!worked.numbers().containsKey(value.output())) {
            throw new IllegalStateException(value.calculation() + " has no output " + value.output());
        }
        double obtained = worked.numbers().get(value.output()).value();
        double difference = Math.abs(obtained - Double.parseDouble(value.expected()));
        return new Compared(value, Written.number(obtained), difference, difference <= value.tolerance());
    }

    private static Compared said(CheckValue value, String word, String obtained) {
        boolean agrees = word.equals(value.expected());
        return new Compared(value, obtained, agrees ? 0 : Double.POSITIVE_INFINITY, agrees);
    }
}
