package org.benchleaf.derive.hazard;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.model.AcuteRoute;
import org.benchleaf.model.HazardLimits;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;

/**
 * Works out the acute toxicity of a mixture for each way in: 100 / estimate = Σ share in % / estimate of the part.
 *
 * <p>Source: Regulation (EC) No 1272/2008, Annex I, 3.1.3.6.1 and, where more than a tenth is of unknown toxicity,
 * 3.1.3.6.2.3: the share that is known takes the place of 100. Parts count from table 1.1 on.
 */
final class AcuteToxicity {

    private static final String CLASS = "Acute Tox. ";

    private final AcuteRoute route;
    private final Verdict verdict;
    private final HazardLimits limits;

    AcuteToxicity(AcuteRoute route, Verdict verdict) {
        this.route = route;
        this.verdict = verdict;
        this.limits = verdict.reference().limits();
    }

    void ask(List<MixturePart> parts) {
        ownLimits(parts);
        Map<MixturePart, Double> estimates = new LinkedHashMap<>();
        parts.forEach(part -> estimate(part).ifPresent(estimate -> estimates.put(part, estimate)));
        if (estimates.isEmpty()) {
            return;
        }
        double unknown = unknown(parts);
        double known = 1 - (unknown > MixturePart.fraction(limits.muchUnknown().value()) ? unknown : 0);
        double mixture = known / estimates.entrySet().stream()
                .mapToDouble(one -> one.getKey().share() / one.getValue()).sum();
        String unit = route.categories().get(0).upTo().unit().symbol();
        Object[] pairs = {"parts", words(estimates, unit), "estimate", Reading.number(mixture) + " " + unit,
            "way", route.way()};
        route.of(mixture * (1 - MixturePart.ALMOST)).ifPresentOrElse(
                category -> verdict.give(category.hazardClass() + " (" + route.way() + ")", category.statement(),
                        route.source(), "acute-reached", pairs),
                () -> verdict.refuse(CLASS + "4 (" + route.way() + ")", route.source(), "acute-above", pairs));
        if (unknown > 0) {
            verdict.lack("toxicity", "toxicity-unknown", "share", MassShare.of(unknown).words(verdict.reference()), "way", route.way());
        }
    }

    /** A limit of its own without an estimate decides by itself. */
    private void ownLimits(List<MixturePart> parts) {
        parts.forEach(part -> part.classes().stream().filter(one -> isOfRoute(part, one))
                .filter(one -> one.from().isPresent() && one.estimate().isEmpty())
                .filter(one -> part.reaches(one.from().get()) && part.isBelow(one.below()))
                .forEach(one -> verdict.give(one.name(), one.statement(), one.source(), "part-own", "substance",
                        part.name(), "share", part.told(verdict.reference()), "limit", Reading.of(one.from().get()))));
    }

    private Optional<Double> estimate(MixturePart part) {
        return part.classes().stream().filter(one -> isOfRoute(part, one))
                .filter(one -> one.from().isEmpty() || one.estimate().isPresent())
                .filter(one -> part.reaches((one.name().startsWith(CLASS + "4") ? limits.counts() : limits.graveCounts()).value()))
                .map(this::estimate).min(Double::compare);
    }

    private double estimate(Substance.HazardClass hazard) {
        Quantity bound = route.categories().get(0).upTo();
        return hazard.estimate().filter(one -> one.dimension() == bound.dimension())
                .map(one -> one.lowIn(bound.unit())).orElseGet(() -> route.categories().stream()
                        .filter(one -> hazard.name().startsWith(one.hazardClass())).findFirst()
                        .map(one -> one.takenAs().value()).orElse(bound.value()));
    }

    /** "Breath" without more means vapour, or mist and dust for a solid, or gas for a gas. */
    private boolean isOfRoute(MixturePart part, Substance.HazardClass hazard) {
        if (!hazard.name().startsWith(CLASS)) {
            return false;
        }
        String way = hazard.name().replaceFirst("^[^(]*\\(?", "").replace(")", "");
        String meant = !way.equals("breath") ? way : switch (part.substance().form()) {
            case "gas" -> "gas";
            case "solid", "dust" -> "mist";
            default -> "vapour";
        };
        return meant.equals(route.way());
    }

    private double unknown(List<MixturePart> parts) {
        return parts.stream().filter(part -> part.reaches(limits.counts().value()))
                .filter(part -> part.substance().hazards() == Substance.Answer.UNKNOWN
                        || part.substance().toxicityUnknown().contains(route.group()))
                .mapToDouble(MixturePart::share).sum();
    }

    private String words(Map<MixturePart, Double> estimates, String unit) {
        Reference reference = verdict.reference();
        return reference.joined(estimates.entrySet().stream().map(one -> reference.sentence("acute-part", "substance",
                one.getKey().name(), "share", one.getKey().told(reference), "estimate",
                Reading.number(one.getValue()) + " " + unit)).toList());
    }
}
