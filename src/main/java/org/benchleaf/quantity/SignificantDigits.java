package org.benchleaf.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Rounds to significant digits, alike in the program and in a page. */
public final class SignificantDigits {

    private SignificantDigits() {
    }

    /**
     * The number with at most so many significant digits, a half rounded away from zero.
     *
     * <p>In place of {@link BigDecimal#round}, which leaves a digit too many where it is compiled to JavaScript.
     */
    public static BigDecimal of(BigDecimal number, int digits) {
        int surplus = number.precision() - digits;
        return surplus <= 0 ? number : number.setScale(number.scale() - surplus, RoundingMode.HALF_UP);
    }
}
