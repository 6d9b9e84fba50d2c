package org.benchleaf.derive.hazard;

import java.util.List;
import java.util.Optional;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.model.HazardLimits;
import org.benchleaf.model.LowReserve;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;

/**
 * Takes a strongly acid or alkaline mixture as corrosive, unless a test of it is stated that shows otherwise. What a test
 * rules out makes room for the next milder class, until that is ruled out too.
 *
 * <p>Source: Regulation (EC) No 1272/2008, Annex I, 3.2.3.1.2 and 3.3.3.1.2.
 */
final class ExtremePh {

    private final Verdict verdict;
    private final HazardLimits limits;

    ExtremePh(Verdict verdict) {
        this.verdict = verdict;
        this.limits = verdict.reference().limits();
    }

    /** The class that the pH gives, and the one below it. */
    private record Pair(String name, String statement, String milder, String milderStatement, String source) {
    }

    private static final List<Pair> CLASSES = List.of(new Pair("Skin Corr. 1", "H314", "Skin Irrit. 2", "H315", "clp-i-32"),
            new Pair("Eye Dam. 1", "H318", "Eye Irrit. 2", "H319", "clp-i-33"));

    void ask(Composition composition, List<MixturePart> parts) {
        new MixturePh(verdict.reference()).asInWater(composition).filter(limits::isExtreme).ifPresent(ph -> CLASSES.forEach(pair ->
                verdict.give(pair.name(), pair.statement(), pair.source(), "ph-dry", "ph", Reading.of(ph),
                        "acid", limit(limits.acid()), "alkaline", limit(limits.alkaline()))));
        composition.ph().ifPresent(ph -> {
            if (limits.isExtreme(ph)) {
                Optional<LowReserve> test = composition.lowReserve().or(() -> ofOnlyPart(parts));
                CLASSES.forEach(pair -> ask(pair, ph, test));
            } else {
                verdict.refuseAny(limits.alkaline().source(), "ph-between", "ph", Reading.of(ph),
                        "acid", limit(limits.acid()), "alkaline", limit(limits.alkaline()));
            }
        });
    }

    /** The test of a substance, where that substance alone acts on the pH and no more of it is there than was tested. */
    private static Optional<LowReserve> ofOnlyPart(List<MixturePart> parts) {
        List<MixturePart> acting = parts.stream().filter(part -> part.substance().acidity()
                .filter(acidity -> acidity.is() == Substance.Acidity.Kind.NEUTRAL).isEmpty()).toList();
        return acting.size() != 1 ? Optional.empty() : acting.get(0).substance().lowReserve()
                .filter(test -> test.upTo().filter(most -> acting.get(0).share()
                        <= MixturePart.fraction(most) * (1 + MixturePart.ALMOST)).isPresent());
    }

    private void ask(Pair pair, Quantity ph, Optional<LowReserve> test) {
        String end = Reading.number(limits.isAlkaline(ph) ? ph.high() : ph.low());
        if (!isRuledOut(pair.statement(), test)) {
            verdict.give(pair.name(), pair.statement(), pair.source(), "ph-extreme", "ph", end,
                    "acid", limit(limits.acid()), "alkaline", limit(limits.alkaline()));
            return;
        }
        Object[] pairs = {"ph", end, "test", test.orElseThrow().test()};
        verdict.refuse(pair.name(), test.orElseThrow().source(), "ph-low-reserve", pairs);
        if (isRuledOut(pair.milderStatement(), test)) {
            verdict.refuse(pair.milder(), test.orElseThrow().source(), "ph-low-reserve", pairs);
        } else {
            verdict.give(pair.milder(), pair.milderStatement(), pair.source(), "ph-milder", pairs);
        }
    }

    private static boolean isRuledOut(String statement, Optional<LowReserve> test) {
        return test.filter(one -> one.rulesOut().contains(statement)).isPresent();
    }

    private static String limit(HazardLimits.Limit limit) {
        return Reading.number(limit.value().value());
    }
}
