package org.benchleaf.science;

import java.util.Optional;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * The light and the observer that a colour was measured with.
 *
 * <p>Source of the tristimulus values: CIE 15:2004, as carried by open libraries; the coefficients of ASTM E313
 * reproduce those of D65/10 and C/2 to 0.001.
 */
public enum WhitePoint {
    D65_10("D65/10", 94.811, 107.304, 0.3138, 0.3310, 900, 1.3013, 1.1498),
    D65_2("D65/2", 95.047, 108.883, 0.3127, 0.3290, 1000, 1.2985, 1.1335),
    C_2("C/2", 98.074, 118.232, 0.3101, 0.3162, 1000, 1.2769, 1.0592),
    /** ASTM E313 gives no coefficients for it here, and CIE whiteness is not defined for it. */
    D50_2("D50/2", 96.422, 82.521, 0.3457, 0.3585, 0, 0, 0);

    private final String written;
    private final double x;
    private final double z;
    /** The chromaticity as the whiteness formula prints it, to four places. */
    private final double chromaX;
    private final double chromaY;
    private final double tintFactor;
    private final double yellowX;
    private final double yellowZ;

    WhitePoint(String written, double x, double z, double chromaX, double chromaY, double tintFactor, double yellowX,
            double yellowZ) {
        this.written = written;
        this.x = x;
        this.z = z;
        this.chromaX = chromaX;
        this.chromaY = chromaY;
        this.tintFactor = tintFactor;
        this.yellowX = yellowX;
        this.yellowZ = yellowZ;
    }

    /** The white point written this way, as light and observer: {@code D65/10}. */
    public static Optional<WhitePoint> named(String written) {
        for (WhitePoint each : values()) {
            if (each.written.equals(written)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    /** How it is written, as light and observer. */
    public String written() {
        return written;
    }

    /** The tristimulus values of the perfect white. */
    public Colour.Tristimulus white() {
        return new Colour.Tristimulus(Quantity.number(x), Quantity.number(100), Quantity.number(z));
    }

    /** Whether whiteness and yellowness are defined for this light and observer. */
    public boolean forPaper() {
        return tintFactor > 0;
    }

    /**
     * Works out the yellowness of a colour.
     *
     * <p>Formula: YI = 100 (Cx X − Cz Z) / Y.
     *
     * <p>Units: plain numbers.
     *
     * <p>Range: Y above 0; light C or D65.
     *
     * <p>Source: ASTM E313, coefficients for light and observer.
     *
     * @throws OutsideRange if Y is 0 or the light is another
     */
    public Quantity yellowness(Colour.Tristimulus measured) {
        requireForPaper("ASTM E313, coefficients for C and D65");
        double y = Require.aboveZero("xyz", measured.y(), Unit.NONE);
        return Quantity.number(100 * (yellowX * measured.xValue() - yellowZ * measured.zValue()) / y);
    }

    /**
     * Works out whiteness and tint of a colour.
     *
     * <p>Formula: as {@link Whiteness#of}, with the chromaticity of this white point.
     *
     * <p>Units: plain numbers.
     *
     * <p>Range: Y above 0; light C or D65.
     *
     * <p>Source: CIE 15:2004, section 9.4; ISO 11475 (D65/10°), ISO 11476 (C/2°).
     *
     * @throws OutsideRange if Y is 0 or the light is another
     */
    public Whiteness whiteness(Colour.Tristimulus measured) {
        requireForPaper("CIE 15:2004, whiteness; ISO 11475 and ISO 11476");
        return Whiteness.of(measured, Quantity.number(chromaX), Quantity.number(chromaY), Quantity.number(tintFactor));
    }

    private void requireForPaper(String source) {
        if (!forPaper()) {
            throw new OutsideRange("white", Clause.value(written), Clause.of("C/2, D65/2 or D65/10"), source);
        }
    }
}
