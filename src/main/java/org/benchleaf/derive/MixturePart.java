package org.benchleaf.derive;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * One substance of a mixture with the classes that count.
 *
 * @param substance its row
 * @param share its largest share by mass, from 0 to 1
 * @param classes those of the row, but for what a note of the law takes off
 */
record MixturePart(Substance substance, double share, List<Substance.HazardClass> classes) {

    /** Benzene below this share takes off the classes that petroleum has only for its benzene (note P). */
    private static final double NOTE_P = 0.001;
    /** Shares that were added and multiplied are not exact in their last digits. */
    static final double ALMOST = 1e-9;

    /** A substance with its share, its classes after note P. */
    static MixturePart of(Substance substance, double share) {
        boolean free = substance.notes().contains("P")
                && substance.benzene().filter(one -> one.highIn(Unit.PERCENT_BY_MASS) / 100 < NOTE_P).isPresent();
        List<Substance.HazardClass> classes = substance.classes().stream()
                .filter(one -> !free || !one.name().startsWith("Carc.") && !one.name().startsWith("Muta.")).toList();
        return new MixturePart(substance, share, classes);
    }

    /** Its name as it stands inside a sentence. */
    String name() {
        return substance.name().toLowerCase(Locale.ROOT);
    }

    /** Whether the share reaches a limit by mass. */
    boolean reaches(Quantity limit) {
        return share >= fraction(limit) * (1 - ALMOST);
    }

    /** Whether the share lies below the end of a class, where it has one. */
    boolean isBelow(Optional<Quantity> end) {
        return end.map(limit -> share < fraction(limit) * (1 - ALMOST)).orElse(true);
    }

    static double fraction(Quantity share) {
        return share.in(Unit.PERCENT_BY_MASS) / 100;
    }

    static String percent(double share) {
        return Reading.number(share * 100) + " % by mass";
    }
}
