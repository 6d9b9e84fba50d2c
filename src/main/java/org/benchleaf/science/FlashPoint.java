package org.benchleaf.science;

import java.util.List;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * One row of a published table of flash points.
 *
 * @param strength the strength as the table states it
 * @param temperature the flash point, closed cup
 * @param lowest the lowest flash point that any version of the table gives for this strength
 */
public record FlashPoint(Quantity strength, Quantity temperature, Quantity lowest) {

    private static final String RANGE_SOURCE = "the published table of flash points";

    /**
     * Reads the flash point of a mixture of ethanol and water off a table, careful side first.
     *
     * <p>Formula: linear between the rows. The same table is published with its strengths by volume and with its
     * strengths by mass; read by volume it gives the lower flash point, which is the value here, and read by mass the
     * high end. Where the table has two versions of a row, the lower one gives the low end.
     *
     * <p>Units: % v/v in, °C out.
     *
     * <p>Range: from the weakest to the strongest row of the table.
     *
     * <p>Source: the table handed in.
     *
     * @param rows the table, strengths growing
     * @throws OutsideRange if the strength lies outside the table
     */
    public static Quantity ofEthanolWater(Quantity strength, List<FlashPoint> rows) {
        double first = rows.get(0).strength().in(Unit.PERCENT_BY_VOLUME);
        double last = rows.get(rows.size() - 1).strength().in(Unit.PERCENT_BY_VOLUME);
        double percent = Require.within("strength", strength, first, last, Unit.PERCENT_BY_VOLUME, RANGE_SOURCE);
        double massPercent = Math.max(first, EthanolWater.massFraction(strength).in(Unit.PERCENT_BY_MASS));
        double value = read(rows, percent, false);
        return Quantity.between(Math.min(value, read(rows, percent, true)), value,
                Math.max(value, read(rows, massPercent, false)), Unit.CELSIUS);
    }

    private static double read(List<FlashPoint> rows, double percent, boolean careful) {
        int above = 1;
        while (above < rows.size() - 1 && rows.get(above).strength().in(Unit.PERCENT_BY_VOLUME) < percent) {
            above++;
        }
        double x0 = rows.get(above - 1).strength().in(Unit.PERCENT_BY_VOLUME);
        double x1 = rows.get(above).strength().in(Unit.PERCENT_BY_VOLUME);
        double y0 = rows.get(above - 1).flash(careful);
        double y1 = rows.get(above).flash(careful);
        return y0 + (y1 - y0) * (percent - x0) / (x1 - x0);
    }

    private double flash(boolean careful) {
        return (careful ? lowest : temperature).in(Unit.CELSIUS);
    }
}
