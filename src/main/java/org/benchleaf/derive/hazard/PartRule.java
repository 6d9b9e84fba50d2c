package org.benchleaf.derive.hazard;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.model.MixtureRule;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;

/** Holds each part by itself against the limit of a class, without adding: cancer, genes, fertility, organs, sensitising. */
final class PartRule {

    private static final String NAMED = "EUH208";
    private static final Set<String> ORGANS = Set.of("H370", "H371", "H372", "H373");

    private final MixtureRule rule;
    private final Verdict verdict;

    PartRule(MixtureRule rule, Verdict verdict) {
        this.rule = rule;
        this.verdict = verdict;
    }

    void ask(List<MixturePart> parts, boolean inWater) {
        for (MixturePart part : parts) {
            boolean alone = part.classes().stream().anyMatch(one -> rule.gives(one) && one.from().isPresent());
            for (Substance.HazardClass hazard : part.classes()) {
                Optional<MixtureRule.Addend> addend = rule.addendOf(part.substance(), hazard);
                if (addend.isPresent() && (!alone || rule.gives(hazard))) {
                    ask(part, hazard, addend.get(), inWater);
                }
            }
        }
    }

    private void ask(MixturePart part, Substance.HazardClass hazard, MixtureRule.Addend addend, boolean inWater) {
        Optional<Quantity> own = hazard.from().filter(limit -> addend.own() || rule.gives(hazard));
        Quantity limit = own.orElse(addend.limit());
        String name = rule.gives().orElse(hazard.name());
        String statement = rule.statement().orElse(hazard.statement());
        Object[] pairs = {"substance", part.name(), "share", part.told(verdict.reference()), "limit", Reading.of(limit)};
        if (!part.reaches(limit)) {
            if (rule.named() && part.reaches(limit, verdict.reference().limits().named().value())) {
                verdict.give(name, NAMED, rule.source(), "named-only", pairs);
                verdict.name(NAMED, List.of(part.name()));
            } else {
                verdict.refuse(name, rule.source(), own.isPresent() ? "part-below-own" : "part-below", pairs);
            }
        } else if (rule.goneInWater() && inWater) {
            verdict.refuse(name, rule.source(), "gone-in-water", pairs);
        } else if (part.isBelow(hazard.below()) && !verdict.covers(statement)) {
            verdict.give(name, statement, hazard.source(), key(own.isPresent(), part.share()), pairs);
            if (ORGANS.contains(statement)) {
                verdict.name(statement, hazard.organs().map(Substance.Organs::words).orElse(List.of()));
            }
        }
    }

    private String key(boolean own, double share) {
        boolean tested = rule.by() == MixtureRule.By.TESTED && share < 1;
        return tested && !own ? "taken-on" : own ? "part-own" : "part-reached";
    }
}
