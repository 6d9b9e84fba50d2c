package org.benchleaf.derive.figure;

import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Amounts in the unit and of the share that is asked for. */
public final class AmountConversion {

    private AmountConversion() {
    }

    public static Quantity times(Quantity amount, double factor) {
        return new Quantity(amount.value() * factor, amount.low() * factor, amount.high() * factor, amount.unit(),
                amount.spread());
    }

    /** In litres from one litre, in kilograms from one kilogram, else in millilitres and grams. */
    public static Quantity readable(Quantity amount) {
        if (amount.dimension() == Dimension.VOLUME) {
            return amount.to(amount.in(Unit.LITRE) >= 1 ? Unit.LITRE : Unit.MILLILITRE);
        }
        if (amount.dimension() == Dimension.MASS) {
            return amount.to(amount.in(Unit.KILOGRAM) >= 1 ? Unit.KILOGRAM : Unit.GRAM);
        }
        return amount;
    }
}
