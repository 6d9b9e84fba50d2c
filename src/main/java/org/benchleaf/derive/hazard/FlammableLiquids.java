package org.benchleaf.derive.hazard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.model.HazardLimits;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.science.EthanolWater;

/**
 * Classifies the vapour of a mixture that burns: ethanol in water by the published table, anything else as the gravest of
 * its parts, which is the careful side; it is never taken to be none because a flash point is missing.
 *
 * <p>Source: Regulation (EC) No 1272/2008, Annex I, 2.6.
 */
final class FlammableLiquids {

    private static final String ETHANOL = "ethanol";
    private static final String WATER = "water";

    private final Function<Quantity, Optional<Quantity>> table;
    private final Verdict verdict;
    private final HazardLimits limits;

    FlammableLiquids(Function<Quantity, Optional<Quantity>> table, Verdict verdict) {
        this.table = table;
        this.verdict = verdict;
        this.limits = verdict.reference().limits();
    }

    /** One of the three classes. */
    private record Category(String name, String statement) {
    }

    void ask(List<MixturePart> parts, Optional<Quantity> strength) {
        List<MixturePart> diluted = inWater(parts) ? parts.stream().filter(FlammableLiquids::isTooDilute).toList() : List.of();
        List<MixturePart> burning = parts.stream()
                .filter(part -> part.share() > 0 && category(part).isPresent() && !diluted.contains(part)).toList();
        if (isSpirit(parts, burning)) {
            spirit(strength.orElseGet(() -> strength(parts)));
            return;
        }
        burning.stream().min(gravestFirst()).ifPresent(gravest -> {
            Category category = category(gravest).orElseThrow();
            verdict.give(category.name(), category.statement(), source(gravest), key(gravest), "substance", gravest.name());
        });
        if (burning.isEmpty()) {
            diluted.forEach(part -> verdict.refuse("Flam. Liq. 3", source(part), "flammable-below", "substance", part.name(),
                    "share", part.told(verdict.reference()), "limit",
                    Reading.of(stated(part).flatMap(Substance.HazardClass::from).orElseThrow())));
            parts.stream().filter(part -> flash(part).isPresent() && !diluted.contains(part)).forEach(part -> verdict.refuse("Flam. Liq. 3",
                    source(part), "flash-above", "substance", part.name(), "flash", Reading.of(flash(part).get())));
        }
    }

    /** Whether every other liquid in it is water. */
    private static boolean inWater(List<MixturePart> parts) {
        return parts.stream().map(MixturePart::substance).filter(one -> one.form().equals("liquid"))
                .filter(one -> !one.key().equals(WATER)).count() == 1;
    }

    /** Whether the row says from which share its solution in water catches fire, and this one is weaker. */
    private static boolean isTooDilute(MixturePart part) {
        return stated(part).flatMap(Substance.HazardClass::from).filter(from -> !part.reaches(from)).isPresent();
    }

    private static Optional<Substance.HazardClass> stated(MixturePart part) {
        return part.classes().stream().filter(one -> one.name().startsWith("Flam. Liq."))
                .min(Comparator.comparing(Substance.HazardClass::statement));
    }

    /** By class, and in one class by flash point; a part without one stands behind those that have it. */
    private Comparator<MixturePart> gravestFirst() {
        return Comparator.<MixturePart, String>comparing(part -> category(part).orElseThrow().statement())
                .thenComparing(part -> flash(part).map(one -> one.lowIn(Unit.CELSIUS)).orElse(Double.POSITIVE_INFINITY));
    }

    private static String key(MixturePart part) {
        return part.share() >= 1 - MixturePart.ALMOST ? "flammable-alone"
                : flash(part).isPresent() ? "flammable-part" : "flammable-part-without-flash";
    }

    private String source(MixturePart part) {
        return stated(part).map(Substance.HazardClass::source)
                .or(() -> part.substance().fire().map(Substance.Fire::source)).orElse(limits.highFlash().source());
    }

    private static Optional<Quantity> flash(MixturePart part) {
        return part.substance().fire().flatMap(Substance.Fire::flashPoint);
    }

    /** The class that the row states, else the one that its flash point gives. */
    private Optional<Category> category(MixturePart part) {
        return stated(part).map(one -> new Category(one.name(), one.statement()))
                .or(() -> flash(part).flatMap(flash -> category(flash.low(), part.substance().fire()
                        .flatMap(Substance.Fire::boilingPoint).map(Quantity::low))));
    }

    private Optional<Category> category(double flash, Optional<Double> boiling) {
        if (flash < limits.lowFlash().value().in(Unit.CELSIUS)) {
            return Optional.of(boiling.filter(one -> one > limits.boiling().value().in(Unit.CELSIUS)).isPresent()
                    ? new Category("Flam. Liq. 2", "H225") : new Category("Flam. Liq. 1", "H224"));
        }
        return flash <= limits.highFlash().value().in(Unit.CELSIUS) ? Optional.of(new Category("Flam. Liq. 3", "H226")) : Optional.empty();
    }

    /** Ethanol, water and what is dissolved in them, no other liquid. */
    private static boolean isSpirit(List<MixturePart> parts, List<MixturePart> burning) {
        return burning.size() == 1 && burning.get(0).substance().key().equals(ETHANOL)
                && parts.stream().anyMatch(part -> part.substance().key().equals(WATER))
                && parts.stream().map(MixturePart::substance).allMatch(one -> one.key().equals(ETHANOL)
                        || one.key().equals(WATER) || !one.form().equals("liquid"));
    }

    private static Quantity strength(List<MixturePart> parts) {
        double ethanol = share(parts, ETHANOL);
        double mass = ethanol / (ethanol + share(parts, WATER));
        return EthanolWater.strength(Quantity.of(Math.min(100, 100 * mass), Unit.PERCENT_BY_MASS));
    }

    private static double share(List<MixturePart> parts, String key) {
        return parts.stream().filter(part -> part.substance().key().equals(key)).mapToDouble(MixturePart::share).sum();
    }

    private void spirit(Quantity strength) {
        double percent = strength.highIn(Unit.PERCENT_BY_VOLUME);
        if (percent <= limits.spirit().value().lowIn(Unit.PERCENT_BY_VOLUME)) {
            verdict.refuse("Flam. Liq. 3", limits.spirit().source(), "spirit-weak", "strength", Reading.number(percent));
            return;
        }
        Optional<Quantity> read =
                table.apply(Quantity.of(Math.min(percent, limits.spirit().value().highIn(Unit.PERCENT_BY_VOLUME)), Unit.PERCENT_BY_VOLUME));
        // Rounded down: the table's own basis of strength is uncertain.
        double flash = read.map(one -> Math.floor(one.low())).orElse(0.0);
        List<Object> pairs = new ArrayList<>(List.of("flash", (int) flash, "strength", Reading.number(percent)));
        category(flash, Optional.of(limits.boiling().value().in(Unit.CELSIUS) + 1)).ifPresentOrElse(
                category -> verdict.give(category.name(), category.statement(), limits.spirit().source(), "spirit-table",
                        pairs.toArray()),
                () -> verdict.refuse("Flam. Liq. 3", limits.spirit().source(), "spirit-above", pairs.toArray()));
    }
}
