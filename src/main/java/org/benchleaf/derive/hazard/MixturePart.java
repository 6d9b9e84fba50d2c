package org.benchleaf.derive.hazard;

import java.util.List;
import java.util.Optional;
import org.benchleaf.model.HazardLimits;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * One substance of a mixture with the classes that count.
 *
 * @param substance its row
 * @param mass its share by mass
 * @param classes those of the row, but for what a note of the law takes off
 */
record MixturePart(Substance substance, MassShare mass, List<Substance.HazardClass> classes) {

    /** Shares that were added and multiplied are not exact in their last digits. */
    static final double ALMOST = 1e-9;

    /** A substance with its share, its classes after note P. */
    static MixturePart of(Substance substance, MassShare share, HazardLimits limits) {
        boolean free = substance.notes().contains("P")
                && substance.benzene()
                        .filter(one -> one.highIn(Unit.PERCENT_BY_MASS) / 100 < fraction(limits.benzene().value())).isPresent();
        List<Substance.HazardClass> classes = substance.classes().stream()
                .filter(one -> !free || !one.name().startsWith("Carc.") && !one.name().startsWith("Muta.")).toList();
        return new MixturePart(substance, share, classes);
    }

    /** The largest share that it can have, from 0 to 1: the classes go by it. */
    double share() {
        return mass.most();
    }

    /** Its name as it stands inside a sentence. */
    String name() {
        return substance.within();
    }

    /** Whether the share reaches a limit by mass. */
    boolean reaches(Quantity limit) {
        return share() >= fraction(limit) * (1 - ALMOST);
    }

    /** Whether the share reaches such a part of a limit by mass. */
    boolean reaches(Quantity limit, Quantity part) {
        return share() >= fraction(limit) * part.in(Unit.PERCENT) / 100;
    }

    /** Whether the share lies below the end of a class, where it has one. */
    boolean isBelow(Optional<Quantity> end) {
        return end.map(limit -> share() < fraction(limit) * (1 - ALMOST)).orElse(true);
    }

    static double fraction(Quantity share) {
        return share.in(Unit.PERCENT_BY_MASS) / 100;
    }

    /** Its share by mass in words. */
    String told(Reference reference) {
        return mass.words(reference);
    }
}
