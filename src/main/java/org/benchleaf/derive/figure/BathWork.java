package org.benchleaf.derive.figure;

import java.util.Optional;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;

/**
 * How long the work at the baths of a step takes, beside the baths themselves.
 *
 * <p>Lowering and draining are not among it. A bath is timed from laying the sheet in until lifting it out (common practice, no
 * source), so that the wet sheet is covered; draining is told by the step that follows, whose time the case states. A class plans
 * both, for they take hands while other stations wait ({@code StationCut}).
 *
 * @param filling of the first bath, before the sheet goes in
 * @param change from lifting the sheet out of one bath to laying it into the next
 */
public record BathWork(Minutes filling, Minutes change) {

    /** As it was worked out for a step; empty where it has no baths, or nothing can be said. */
    public static Optional<BathWork> of(Step step, Ledger ledger) {
        return step.part(Part.Bath.class).flatMap(bath -> told(step, bath, "filling-time", ledger).flatMap(filling ->
                told(step, bath, "change-time", ledger).map(change -> new BathWork(filling, change))));
    }

    private static Optional<Minutes> told(Step step, Part.Bath bath, String name, Ledger ledger) {
        return ledger.figure(FigureKey.ofStep(step, bath, name).id()).map(Figure::value).map(Minutes::of);
    }
}
