package org.benchleaf.derive;

import java.util.List;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Plain arithmetic with quantities whose ends move together. */
final class Amounts {

    private Amounts() {
    }

    static Quantity times(Quantity amount, double factor) {
        return new Quantity(amount.value() * factor, amount.low() * factor, amount.high() * factor, amount.unit(),
                amount.spread());
    }

    /**
     * The sum in the unit of the first.
     *
     * <p>Ends are added, since amounts of one case are not independent of one another.
     */
    static Quantity sum(List<Quantity> amounts) {
        Quantity sum = amounts.get(0);
        for (Quantity next : amounts.subList(1, amounts.size())) {
            Quantity same = next.to(sum.unit());
            double low = sum.low() + same.low();
            double high = sum.high() + same.high();
            Quantity.Spread spread = low == high ? Quantity.Spread.NONE
                    : sum.spread() == Quantity.Spread.NONE ? same.spread() : sum.spread();
            sum = new Quantity(sum.value() + same.value(), low, high, sum.unit(), spread);
        }
        return sum;
    }

    /** Rounded up to two figures, in a unit that a vessel or a balance shows. */
    static Quantity roundedUp(Quantity amount, double smallestStep) {
        double value = amount.high();
        double step = value <= 0 ? 1 : Math.pow(10, Math.floor(Math.log10(value)) - 1);
        double chosen = Math.max(step, smallestStep);
        double steps = value / chosen;
        double whole = Math.abs(steps - Math.rint(steps)) < 1e-9 ? Math.rint(steps) : Math.ceil(steps);
        return Quantity.of(clean(whole * chosen), amount.unit());
    }

    /** Without the last places that decimal steps leave in binary numbers. */
    private static double clean(double value) {
        return new java.math.BigDecimal(value).round(new java.math.MathContext(12)).doubleValue();
    }

    /** In litres from one litre, in kilograms from one kilogram, else in millilitres and grams. */
    static Quantity readable(Quantity amount) {
        if (amount.dimension() == Dimension.VOLUME) {
            return amount.to(amount.in(Unit.LITRE) >= 1 ? Unit.LITRE : Unit.MILLILITRE);
        }
        if (amount.dimension() == Dimension.MASS) {
            return amount.to(amount.in(Unit.KILOGRAM) >= 1 ? Unit.KILOGRAM : Unit.GRAM);
        }
        return amount;
    }
}
