package org.benchleaf.derive.hazard;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.benchleaf.model.MixtureRule;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Classifies one composition by asking every family of rules, each of which gives its grounds; the strictest result counts. */
final class Classification {

    private static final String WATER = "water";
    /** From this share of water on, a solid is taken to be dissolved. */
    private static final double MOSTLY_WATER = 0.5;

    private final Verdict verdict;
    private final LabelElements label;

    /**
     * Classifies a composition.
     *
     * @param flashPoints of ethanol in water, by strength
     */
    Classification(Reference reference, Composition composition, Function<Quantity, Optional<Quantity>> flashPoints) {
        verdict = new Verdict(reference);
        List<MixturePart> parts = composition.substances(reference).stream()
                .map(row -> MixturePart.of(row, composition.shares().get(row.key()), reference.limits())).toList();
        tellNoteP(parts);
        new FlammableLiquids(flashPoints, verdict).ask(parts, composition.spirit()
                .filter(spirit -> spirit.substance().equals("ethanol")).map(Composition.Spirit::strength));
        new ExtremePh(verdict).ask(composition, parts);
        reference.acute().forEach(route -> new AcuteToxicity(route, verdict).ask(parts));
        boolean inWater = composition.least(WATER) >= MOSTLY_WATER;
        reference.rules().forEach(rule -> ask(rule, parts, inWater));
        tellUnknown(parts);
        label = new LabelElements(reference, verdict.statements());
    }

    private void ask(MixtureRule rule, List<MixturePart> parts, boolean inWater) {
        if (rule.by() == MixtureRule.By.SUM) {
            new SumRule(rule, verdict).ask(parts, isThick(rule, parts));
        } else {
            new PartRule(rule, verdict).ask(parts, inWater);
        }
    }

    /** Only a substance by itself has a known viscosity; that of a mixture is taken to let it flow. */
    private static boolean isThick(MixtureRule rule, List<MixturePart> parts) {
        return parts.size() == 1 && rule.flowsUpTo().isPresent() && parts.get(0).substance().viscosity()
                .filter(one -> one.value().lowIn(Unit.SQUARE_MILLIMETRE_PER_SECOND) > rule.flowsUpTo().get().value())
                .isPresent();
    }

    private void tellNoteP(List<MixturePart> parts) {
        parts.stream().filter(part -> part.classes().size() < part.substance().classes().size())
                .forEach(part -> verdict.refuse("Carc. 1B", "clp-vi-note-p", "note-p", "substance", part.name()));
    }

    private void tellUnknown(List<MixturePart> parts) {
        parts.stream().map(MixturePart::substance).filter(one -> one.hazards() == Substance.Answer.UNKNOWN)
                .forEach(one -> verdict.lack("hazards", "hazards-unknown", "substance", one.name(), "because",
                        one.because().orElse("")));
    }

    /** H codes, most severe first, without those that a stronger one covers. */
    List<String> statements() {
        return label.statements();
    }

    List<Hazards.Ground> grounds() {
        return verdict.grounds();
    }

    /** What statements name, by their codes: sensitising substances, organs. */
    Map<String, List<String>> named() {
        return verdict.named();
    }

    /** What the rules could not tell. */
    List<Hazards.Unknown> unknown() {
        return verdict.unknown();
    }

    Optional<String> signal() {
        return label.signal();
    }

    List<String> pictograms() {
        return label.pictograms();
    }

    List<String> precautions() {
        return label.precautions();
    }
}
