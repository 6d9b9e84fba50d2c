package org.benchleaf.derive.hazard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.model.MixtureRule;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * Adds the shares of what counts for a class, each divided by its limit: one or more gives the class. A part with a limit
 * of its own enters with that.
 *
 * <p>Source: Regulation (EC) No 1272/2008, Annex I, 3.2.3.3 and 3.3.3.3, 3.8.3.4, 3.10.3.3, 4.1.3.5; own limits inside the
 * sum as in ECHA's guidance on the application of the criteria, 3.2.3.3.
 */
final class SumRule {

    private final MixtureRule rule;
    private final Verdict verdict;

    /** What one part brings to the sum: its share, the limit that it is divided by, and how often it counts, which may not be known. */
    private record Term(MixturePart part, double limit, double factor, boolean open, boolean own, boolean counts) {

        double ratio() {
            return part.share() * factor / limit;
        }
    }

    SumRule(MixtureRule rule, Verdict verdict) {
        this.rule = rule;
        this.verdict = verdict;
    }

    void ask(List<MixturePart> parts, boolean thick) {
        String statement = rule.statement().orElseThrow();
        if (verdict.covers(statement)) {
            return;
        }
        List<Term> terms = parts.stream().flatMap(part -> term(part).stream()).toList();
        List<Term> counting = terms.stream().filter(Term::counts).toList();
        double sum = counting.stream().mapToDouble(Term::ratio).sum();
        String name = rule.gives().orElseThrow();
        Optional<Term> open = terms.stream().filter(term -> term.open() && term.part().share() > 0).findFirst();
        if (sum < 1 - MixturePart.ALMOST && open.isPresent()) {
            verdict.lack("hazards", "factor-unknown", "substance", open.get().part().name(), "class", name);
        } else if (sum >= 1 - MixturePart.ALMOST && thick) {
            verdict.refuse(name, rule.source(), "too-thick", "limit", Reading.of(rule.flowsUpTo().orElseThrow()));
        } else if (sum >= 1 - MixturePart.ALMOST) {
            verdict.give(name, statement, rule.source(), "sum-reached", "parts", words(counting), "sum",
                    Reading.number(sum));
        } else if (!counting.isEmpty()) {
            verdict.refuse(name, rule.source(), "sum-below", "parts", words(counting), "sum", Reading.number(sum));
        } else if (!terms.isEmpty()) {
            verdict.refuse(name, rule.source(), "sum-too-little", "parts", words(terms));
        }
    }

    private String words(List<Term> terms) {
        return verdict.reference().joined(terms.stream().map(this::words).toList());
    }

    private String words(Term term) {
        String share = term.part().told(verdict.reference()) + (term.factor() > 1 ? " × " + Reading.number(term.factor()) : "");
        return verdict.reference().sentence(term.own() ? "sum-part-own" : "sum-part", "substance", term.part().name(), "share", share,
                "limit", Reading.number(term.limit() * 100));
    }

    /** The largest that a part brings; a limit of its own for the class that results counts alone. */
    private Optional<Term> term(MixturePart part) {
        Optional<Quantity> own = part.classes().stream().filter(rule::gives).flatMap(one -> one.from().stream())
                .min(Comparator.comparingDouble(limit -> limit.in(Unit.PERCENT_BY_MASS)));
        boolean meant = part.classes().stream().anyMatch(one -> rule.addendOf(part.substance(), one).isPresent());
        if (own.isPresent() && meant) {
            double limit = MixturePart.fraction(own.get());
            return Optional.of(new Term(part, limit, 1, false, true, true));
        }
        List<Term> terms = new ArrayList<>();
        part.classes().forEach(one -> rule.addendOf(part.substance(), one)
                .ifPresent(addend -> terms.add(term(part, one, addend))));
        return terms.stream().max(Comparator.comparing(Term::counts).thenComparingDouble(Term::ratio));
    }

    private static Term term(MixturePart part, Substance.HazardClass hazard, MixtureRule.Addend addend) {
        boolean own = addend.own() && hazard.from().isPresent();
        double limit = MixturePart.fraction(own ? hazard.from().get() : addend.limit());
        double factor = addend.multiplied() ? hazard.factor().orElse(1.0) : 1;
        double least = MixturePart.fraction(addend.countsFrom());
        boolean open = addend.multiplied() && hazard.factor().isEmpty();
        boolean counts = own || part.share() * factor >= least * (1 - MixturePart.ALMOST);
        return new Term(part, limit, factor, open, own, counts && part.share() > 0);
    }
}
