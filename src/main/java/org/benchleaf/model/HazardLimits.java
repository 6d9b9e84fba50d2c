package org.benchleaf.model;

import org.benchleaf.quantity.Quantity;

/**
 * Limits on which the rules for hazards rest, each with its source.
 *
 * @param alkaline the pH from which on a mixture counts as corrosive
 * @param acid the pH up to which a mixture counts as corrosive
 * @param drain the window of pH in which the drain may be spoken of
 * @param weak the share of everything but water up to which the drain may be spoken of
 * @param boiling the boiling point up to which a liquid of low flash point is of the gravest class
 * @param lowFlash the flash point below which a liquid is highly flammable
 * @param highFlash the flash point up to which a liquid is flammable
 * @param spirit strengths by volume between which the flash points of ethanol in water are published
 * @param benzene the share of benzene below which note P takes classes off
 * @param named the share of its limit from which on a sensitising part is named
 * @param counts the share from which on a harmful part counts for acute toxicity
 * @param graveCounts the same for a poisonous part
 * @param muchUnknown the share of unknown acute toxicity above which the formula leaves it out
 * @param fireInAir the share of the lower limit of flammability above which vapour in the air stops a case
 * @param healthInAir the share of the limit for a working day above which vapour in the air is told
 */
public record HazardLimits(Limit alkaline, Limit acid, Limit drain, Limit weak, Limit boiling, Limit lowFlash, Limit highFlash,
        Limit spirit, Limit benzene, Limit named, Limit counts, Limit graveCounts, Limit muchUnknown, Limit fireInAir,
        Limit healthInAir) {

    /** A limit, its two ends where it is a window, and where it was read. */
    public record Limit(Quantity value, String source) {
    }

    /** Whether the pH, or one end of it, counts as corrosive by itself. */
    public boolean isExtreme(Quantity ph) {
        return isAlkaline(ph) || isAcid(ph);
    }

    /** Whether the upper end of the pH counts as corrosive by itself. */
    public boolean isAlkaline(Quantity ph) {
        return ph.high() >= alkaline.value().value();
    }

    /** Whether the lower end of the pH counts as corrosive by itself. */
    boolean isAcid(Quantity ph) {
        return ph.low() <= acid.value().value();
    }

    /** Whether the drain may be spoken of at this pH. */
    public boolean isForDrain(Quantity ph) {
        return ph.low() >= drain.value().low() && ph.high() <= drain.value().high();
    }

    /** The same limits with another window for the drain. */
    HazardLimits draining(Limit window) {
        return new HazardLimits(alkaline, acid, window, weak, boiling, lowFlash, highFlash, spirit, benzene, named, counts,
                graveCounts, muchUnknown, fireInAir, healthInAir);
    }
}
