package org.benchleaf.science;

import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * Molar masses of the few substances that the formulas themselves need.
 *
 * <p>Source: IUPAC standard atomic weights, from memory, to 0.01 g/mol.
 */
public enum MolarMass {
    CALCIUM_HYDROXIDE(74.093),
    CALCIUM_CARBONATE(100.087),
    CALCIUM_BICARBONATE(162.11),
    MAGNESIUM_BICARBONATE(146.34),
    ETHANOL(46.068),
    WATER(18.015);

    private final double gramsPerMole;

    MolarMass(double gramsPerMole) {
        this.gramsPerMole = gramsPerMole;
    }

    /** The molar mass. */
    public Quantity value() {
        return Quantity.of(gramsPerMole, Unit.GRAM_PER_MOLE);
    }

    double gramsPerMole() {
        return gramsPerMole;
    }
}
