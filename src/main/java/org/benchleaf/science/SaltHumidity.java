package org.benchleaf.science;

import java.util.Optional;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * The humidity of the air over a saturated salt solution.
 *
 * <p>Source: L. Greenspan (1977), Humidity fixed points of binary saturated aqueous solutions, J. Res. NBS 81A, 89-96.
 */
public enum SaltHumidity {
    LITHIUM_CHLORIDE("lithium chloride", 0, 50, 0.3, 0.3, 11.2323, 0.00824245, -2.1489e-4),
    MAGNESIUM_CHLORIDE("magnesium chloride", 0, 50, 0.18, 0.16, 33.6686, -0.00797397, -1.08988e-3),
    /** Only the two values read in a copy of the table, which are the same. */
    POTASSIUM_CARBONATE("potassium carbonate", 20, 25, 0.4, 0.4, 43.2),
    MAGNESIUM_NITRATE("magnesium nitrate", 0, 50, 0.7, 0.7, 60.3514, -0.298153),
    SODIUM_CHLORIDE("sodium chloride", 0, 50, 0.14, 0.12, 75.5164, 0.0398321, -2.65459e-3, 2.848e-5),
    POTASSIUM_CHLORIDE("potassium chloride", 0, 50, 0.6, 0.6, 88.619, -0.19334, 8.99706e-4),
    /** A straight line between the two values of the table, from memory. */
    POTASSIUM_NITRATE("potassium nitrate", 20, 25, 0.7, 0.6, 98.6, -0.2),
    POTASSIUM_SULFATE("potassium sulfate", 0, 50, 0.6, 0.5, 98.7792, -0.0590502);

    private final String salt;
    private final double lowest;
    private final double highest;
    private final double uncertaintyAt20;
    private final double uncertaintyAt25;
    private final double[] terms;

    SaltHumidity(String salt, double lowest, double highest, double uncertaintyAt20, double uncertaintyAt25,
            double... terms) {
        this.salt = salt;
        this.lowest = lowest;
        this.highest = highest;
        this.uncertaintyAt20 = uncertaintyAt20;
        this.uncertaintyAt25 = uncertaintyAt25;
        this.terms = terms;
    }

    /** The salt of this name, if the table has it. */
    public static Optional<SaltHumidity> named(String salt) {
        for (SaltHumidity each : values()) {
            if (each.salt.equals(salt)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    /**
     * Works out the humidity over the salt, with its uncertainty as spread.
     *
     * <p>Formula: RH = Σ aᵢ tⁱ.
     *
     * <p>Units: °C in, % RH out.
     *
     * <p>Range: 0 to 50 °C; 20 to 25 °C for potassium carbonate and potassium nitrate. The uncertainty is stated for
     * 20 and 25 °C, taken in between along a straight line, and outside as the larger of the two.
     *
     * <p>Source: Greenspan (1977), table 2 and coefficients.
     *
     * @throws OutsideRange if the temperature lies outside the range
     */
    public Quantity humidity(Quantity temperature) {
        double t = Require.within("temperature", temperature, lowest, highest, Unit.CELSIUS,
                "Greenspan (1977), J. Res. NBS 81A, 89, for " + salt);
        double percent = 0;
        for (int k = terms.length - 1; k >= 0; k--) {
            percent = percent * t + terms[k];
        }
        return Quantity.plusMinus(percent, uncertainty(t), Unit.PERCENT_HUMIDITY);
    }

    private double uncertainty(double t) {
        if (t < 20 || t > 25) {
            return Math.max(uncertaintyAt20, uncertaintyAt25);
        }
        return uncertaintyAt20 + (uncertaintyAt25 - uncertaintyAt20) * (t - 20) / 5;
    }
}
