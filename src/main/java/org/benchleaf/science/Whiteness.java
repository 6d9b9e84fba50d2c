package org.benchleaf.science;

import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * CIE whiteness of a paper and its tint.
 *
 * @param whiteness 100 for the perfect white
 * @param tint greenish above 0, reddish below
 * @param brightness Y, which bounds the range of the formula
 */
public record Whiteness(Quantity whiteness, Quantity tint, Quantity brightness) {

    /**
     * Works out whiteness and tint.
     *
     * <p>Formula: W = Y + 800 (xn − x) + 1700 (yn − y); T = k (xn − x) − 650 (yn − y), k = 1000 for 2° and 900 for 10°.
     *
     * <p>Units: plain numbers.
     *
     * <p>Range: Y above 0; the result means something only where {@link #holds()}.
     *
     * <p>Source: CIE 15:2004, section 9.4.
     *
     * @throws OutsideRange if Y is 0
     */
    static Whiteness of(Colour.Tristimulus measured, Quantity whiteX, Quantity whiteY, Quantity tintFactor) {
        double y = Require.aboveZero("xyz", measured.y(), Unit.NONE);
        double all = measured.xValue() + y + measured.zValue();
        double dx = whiteX.value() - measured.xValue() / all;
        double dy = whiteY.value() - y / all;
        return new Whiteness(Quantity.number(y + 800 * dx + 1700 * dy),
                Quantity.number(tintFactor.value() * dx - 650 * dy), measured.y());
    }

    /** Whether both numbers lie where the CIE allows the formula: 40 &lt; W &lt; 5 Y − 280 and −4 &lt; T &lt; 2. */
    public boolean holds() {
        double w = whiteness.value();
        double t = tint.value();
        return 40 < w && w < 5 * brightness.in(Unit.NONE) - 280 && -4 < t && t < 2;
    }
}
