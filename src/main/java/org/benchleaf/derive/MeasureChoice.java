package org.benchleaf.derive;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.benchleaf.model.Studio;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * Chooses with what an amount is measured out, and how sure the measured amount is.
 *
 * <p>Method: a vessel's tolerance ± a counts as a triangular distribution, a / √6; a balance's step d as a rectangular
 * one of half a step, taken twice because the empty vessel is weighed too; several fillings add as squares; k = 2.
 * Source: JCGM 100:2008 (GUM), 4.3.7 to 4.3.9 and F.2.2.1; EURACHEM/CITAC, Quantifying Uncertainty, example A1.
 */
final class MeasureChoice {

    private static final double COVERAGE = 2;
    /** Nobody fills a vessel more often than that. */
    private static final int MOST_FILLINGS = 1000;

    private final Studio studio;
    private final VesselTolerances standard;
    private final double coarsest;

    /**
     * What an amount is measured with.
     *
     * @param measured the amount as the vessel or balance can show it
     * @param with in words
     * @param within expanded uncertainty, k = 2
     */
    record Choice(Quantity measured, String with, Quantity within) {
    }

    /**
     * Makes ready to choose.
     *
     * @param coarsest the share of an amount that a step may be; one reads to half a step
     */
    MeasureChoice(Studio studio, VesselTolerances standard, Quantity coarsest) {
        this.studio = studio;
        this.standard = standard;
        this.coarsest = coarsest.in(Unit.PERCENT) * Unit.PERCENT.factor();
    }

    /** The choice for an amount; empty where nothing of the studio's measures it. */
    Optional<Choice> forAmount(Quantity amount) {
        return switch (amount.dimension()) {
            case VOLUME -> forVolume(amount);
            case MASS -> forMass(amount);
            default -> Optional.empty();
        };
    }

    /** The smallest step in which the studio can show an amount of that kind; empty where it measures none. */
    Optional<Quantity> smallestStep(Dimension dimension) {
        return dimension == Dimension.MASS
                ? studio.balances().stream().map(Studio.Balance::step).min(Comparator.comparingDouble(step -> step.in(Unit.GRAM)))
                : studio.glassware().stream().map(one -> Quantity.of(division(capacity(one)), Unit.MILLILITRE))
                        .min(Comparator.comparingDouble(step -> step.in(Unit.MILLILITRE)));
    }

    private Optional<Choice> forVolume(Quantity amount) {
        double wanted = amount.in(Unit.MILLILITRE);
        List<Studio.Vessel> vessels = studio.glassware().stream().filter(vessel -> measures(vessel, wanted))
                .sorted(Comparator.comparingDouble(vessel -> vessel.volume().in(Unit.MILLILITRE))).toList();
        Optional<Studio.Vessel> fitting = vessels.stream().filter(vessel -> capacity(vessel) >= wanted).findFirst();
        if (fitting.isPresent()) {
            return fitting.filter(vessel -> division(capacity(vessel)) <= coarsest * wanted).map(vessel ->
                    choice(wanted, vessel, 1, 0));
        }
        if (vessels.isEmpty()) {
            return Optional.empty();
        }
        Studio.Vessel largest = vessels.get(vessels.size() - 1);
        if (wanted > MOST_FILLINGS * capacity(largest)) {
            return Optional.empty();
        }
        int whole = (int) Math.floor(wanted / capacity(largest) + 1e-9);
        return Optional.of(choice(wanted, largest, whole + (wanted > whole * capacity(largest) + 1e-9 ? 1 : 0), whole));
    }

    /** A flask with a single mark measures nothing but its own volume. */
    private static boolean measures(Studio.Vessel vessel, double wanted) {
        return !vessel.kind().contains("flask") || Math.abs(capacity(vessel) - wanted) < 1e-9;
    }

    private static double capacity(Studio.Vessel vessel) {
        return vessel.volume().in(Unit.MILLILITRE);
    }

    private Choice choice(double wanted, Studio.Vessel vessel, int fillings, int whole) {
        double step = division(capacity(vessel));
        double measured = Math.rint(wanted / step) * step;
        double tolerance = vessel.tolerance().or(() -> standard.of(vessel)).map(one -> one.in(Unit.MILLILITRE))
                .orElse(step);
        double within = COVERAGE * tolerance / Math.sqrt(6) * Math.sqrt(fillings);
        String name = Reading.number(capacity(vessel)) + " mL " + vessel.kind() + ", class " + vessel.grade();
        return new Choice(Quantity.of(clean(measured), Unit.MILLILITRE),
                whole == 0 ? name : name + ", filled " + fillings + " times", Quantity.of(within, Unit.MILLILITRE));
    }

    /** The smallest division of a measuring cylinder. Source: ISO 4788, from memory; others are taken to be alike. */
    private static double division(double capacity) {
        return capacity <= 10 ? 0.2 : capacity <= 25 ? 0.5 : capacity <= 100 ? 1 : capacity <= 250 ? 2
                : capacity <= 500 ? 5 : 10;
    }

    private Optional<Choice> forMass(Quantity amount) {
        double wanted = amount.in(Unit.GRAM);
        return studio.balances().stream().filter(balance -> balance.most().in(Unit.GRAM) >= wanted)
                .filter(balance -> balance.step().in(Unit.GRAM) <= coarsest * wanted)
                .min(Comparator.comparingDouble(balance -> balance.step().in(Unit.GRAM))).map(balance -> {
                    double step = balance.step().in(Unit.GRAM);
                    return new Choice(Quantity.of(clean(Math.rint(wanted / step) * step), Unit.GRAM), balance.id(),
                            Quantity.of(COVERAGE * Math.sqrt(2) * step / 2 / Math.sqrt(3), Unit.GRAM));
                });
    }

    private static double clean(double value) {
        return new java.math.BigDecimal(value).round(new java.math.MathContext(10)).doubleValue();
    }
}
