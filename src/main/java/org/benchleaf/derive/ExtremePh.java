package org.benchleaf.derive;

import java.util.Optional;
import org.benchleaf.quantity.Quantity;

/**
 * Takes a mixture of pH 2 or less, or 11.5 or more, as corrosive: no test of it is known that shows otherwise.
 *
 * <p>Source: Regulation (EC) No 1272/2008, Annex I, 3.2.3.1.2 and 3.3.3.1.2.
 */
final class ExtremePh {

    private static final double CAUSTIC = 11.5;
    private static final double ACID = 2;

    private final Verdict verdict;

    ExtremePh(Verdict verdict) {
        this.verdict = verdict;
    }

    void ask(Optional<Quantity> known) {
        known.ifPresent(ph -> {
            if (ph.high() >= CAUSTIC || ph.low() <= ACID) {
                String end = Reading.number(ph.high() >= CAUSTIC ? ph.high() : ph.low());
                verdict.give("Skin Corr. 1", "H314", "clp-i-32", "ph-extreme", "ph", end);
                verdict.give("Eye Dam. 1", "H318", "clp-i-33", "ph-extreme", "ph", end);
            } else {
                verdict.refuse("none", "clp-i-32", "ph-between", "ph", Reading.of(ph));
            }
        });
    }
}
