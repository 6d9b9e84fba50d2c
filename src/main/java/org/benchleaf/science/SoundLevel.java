package org.benchleaf.science;

import java.util.List;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Several sounds at once. */
public final class SoundLevel {

    private static final double BELS = 10;

    private SoundLevel() {
    }

    /**
     * The level of several sources that do not depend on each other.
     *
     * <p>Formula: L = 10 · lg Σ n · 10^(l / 10).
     *
     * <p>Units: levels in decibels and how often each counts in, a level in decibels out.
     *
     * <p>Range: at least one level, each 0 or more; each counted more than 0 times.
     *
     * <p>Source: OSHA, technical manual, noise, appendix I:A-1, combining decibels.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Quantity sum(List<Quantity> levels, List<Quantity> times) {
        double energy = 0;
        for (int i = 0; i < levels.size(); i++) {
            double level = Require.atLeastZero("levels", levels.get(i), Unit.DECIBEL);
            energy += Require.aboveZero("times", times.get(i), Unit.NONE) * StrictMath.pow(10, level / BELS);
        }
        return Quantity.of(BELS * StrictMath.log10(energy), Unit.DECIBEL);
    }
}
