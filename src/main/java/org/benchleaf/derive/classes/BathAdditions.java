package org.benchleaf.derive.classes;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.model.Part;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.quantity.Unit;

/**
 * How long it takes to bring a fresh bath of water that nobody has tried to its pH: so many parts, each as large as the one with which
 * one begins, until as much is in it as the case added, or where the case tells none, as much as is added at most.
 */
final class BathAdditions {

    private final TreatmentCase source;
    private final Map<String, Figure> figures;
    private final int each;

    /**
     * Of a case.
     *
     * @param figures of the case, for one sheet
     * @param each whole minutes that one addition takes
     */
    BathAdditions(TreatmentCase source, Map<String, Figure> figures, int each) {
        this.source = source;
        this.figures = figures;
        this.each = each;
    }

    /** Whole minutes, those of one addition as often as there are additions; none where it is not known with how much one begins. */
    int minutes(Part.Bath bath) {
        return count(bath) * each;
    }

    private int count(Part.Bath bath) {
        Optional<Double> first = millilitres(bath, "dose");
        OptionalDouble added = source.steps().stream().flatMap(step -> step.part(Part.Bath.class).stream())
                .filter(one -> one.of().equals(bath.of())).flatMap(one -> one.readings().stream())
                .flatMap(reading -> reading.added().stream()).mapToDouble(one -> one.highIn(Unit.MILLILITRE)).max();
        Optional<Double> most = added.isPresent() ? Optional.of(added.getAsDouble()) : millilitres(bath, "dose-ceiling");
        return first.filter(any -> any > 0).flatMap(one -> most.map(all -> (int) Math.ceil(all / one))).orElse(0);
    }

    private Optional<Double> millilitres(Part.Bath bath, String name) {
        return Optional.ofNullable(figures.get(FigureKey.ofSolution(bath.of(), name).id())).map(Figure::value)
                .map(value -> value.highIn(Unit.MILLILITRE));
    }
}
