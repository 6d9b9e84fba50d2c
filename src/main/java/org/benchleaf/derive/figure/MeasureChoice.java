package org.benchleaf.derive.figure;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.calculate.Written;
import org.benchleaf.model.Phrases;
import org.benchleaf.model.ReferenceTable;
import org.benchleaf.model.Studio;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.science.Measuring;

/**
 * Chooses with what an amount is measured out, and how sure the measured amount is.
 */
public final class MeasureChoice {

    /** Nobody fills a vessel more often than that. */
    private static final int MOST_FILLINGS = 1000;
    private static final String PIPETTE = "graduated pipette";

    private final Studio studio;
    private final VesselTolerances standard;
    private final Quantity coarsest;
    private final List<Division> divisions;
    private final Phrases phrases;

    /**
     * What an amount is measured with.
     *
     * @param measured the amount as the vessel or balance can show it
     * @param with in words
     * @param vessel the same without how often it is filled
     * @param within expanded uncertainty, k = 2
     */
    public record Choice(Quantity measured, String with, String vessel, Quantity within) {
    }

    /** The smallest division of vessels of a kind up to a capacity. */
    private record Division(String vessel, Quantity capacity, Quantity division) {

        static Division of(Map<String, String> row) {
            return new Division(row.get("vessel"), Quantity.of(Double.parseDouble(row.get("capacity")), Unit.MILLILITRE),
                    Quantity.of(Double.parseDouble(row.get("division")), Unit.MILLILITRE));
        }
    }

    /**
     * Makes ready to choose.
     *
     * @param divisions the smallest divisions of vessels by their kind and capacity, smallest first
     * @param coarsest the share of an amount that a step may be; one reads to half a step
     * @param phrases the language in which vessels are named
     */
    MeasureChoice(Studio studio, VesselTolerances standard, Quantity coarsest, ReferenceTable divisions, Phrases phrases) {
        this.studio = studio;
        this.standard = standard;
        this.coarsest = coarsest;
        this.divisions = divisions.rows().stream().map(Division::of).toList();
        this.phrases = phrases;
    }

    /** The choice among what the studio of a case has. */
    public static MeasureChoice of(Bench bench) {
        return new MeasureChoice(bench.library().studio(), bench.tolerances(), bench.constant("coarsest-step").value(),
                bench.library().formulary().table("divisions"), bench.library().phrases());
    }

    /** The choice for an amount; empty where nothing of the studio's measures it. */
    public Optional<Choice> forAmount(Quantity amount) {
        return switch (amount.dimension()) {
            case VOLUME -> forVolume(amount);
            case MASS -> forMass(amount);
            default -> Optional.empty();
        };
    }

    /** The smallest step in which the studio can show an amount of that kind; empty where it measures none. */
    public Optional<Quantity> smallestStep(Dimension dimension) {
        return dimension == Dimension.MASS
                ? studio.balances().stream().map(Studio.Balance::step).min(Comparator.comparingDouble(step -> step.in(Unit.GRAM)))
                : studio.glassware().stream().map(this::division)
                        .min(Comparator.comparingDouble(step -> step.in(Unit.MILLILITRE)));
    }

    private Optional<Choice> forVolume(Quantity amount) {
        Quantity wanted = amount.exact();
        List<Studio.Vessel> vessels = studio.glassware().stream().filter(vessel -> measures(vessel, wanted))
                .sorted(Comparator.comparingDouble(MeasureChoice::capacity)).toList();
        Optional<Studio.Vessel> fitting = vessels.stream().filter(vessel -> capacity(vessel) >= wanted.in(Unit.MILLILITRE))
                .findFirst();
        if (fitting.isPresent()) {
            return fitting.filter(vessel -> Measuring.isFineEnough(division(vessel), wanted, coarsest))
                    .map(vessel -> choice(wanted, vessel, 1));
        }
        if (vessels.isEmpty()) {
            return Optional.empty();
        }
        Studio.Vessel largest = vessels.get(vessels.size() - 1);
        int fillings = (int) Math.min(Integer.MAX_VALUE, Measuring.fillings(wanted, largest.volume()).value());
        return fillings > MOST_FILLINGS ? Optional.empty() : Optional.of(choice(wanted, largest, fillings));
    }

    /** A flask with a single mark measures nothing but its own volume. */
    private static boolean measures(Studio.Vessel vessel, Quantity wanted) {
        return !vessel.kind().contains("flask") || Written.number(capacity(vessel)).equals(
                Written.number(wanted.in(Unit.MILLILITRE)));
    }

    private static double capacity(Studio.Vessel vessel) {
        return vessel.volume().in(Unit.MILLILITRE);
    }

    private Choice choice(Quantity wanted, Studio.Vessel vessel, int fillings) {
        Quantity step = division(vessel);
        Quantity tolerance = vessel.tolerance().or(() -> standard.of(vessel)).orElse(step);
        String name = name(vessel);
        return new Choice(Measuring.shown(wanted, step),
                fillings == 1 ? name : phrases.say("{vessel}, filled {n} times", "vessel", name, "n", fillings), name,
                Measuring.ofVessel(tolerance, fillings));
    }

    /**
     * The smallest division of a vessel; between two sizes of the table the larger one's, beyond it the coarsest. A kind that the table
     * lacks is divided like the first.
     */
    private Quantity division(Studio.Vessel vessel) {
        boolean inTable = divisions.stream().anyMatch(row -> row.vessel().equals(vessel.kind()));
        String kind = inTable ? vessel.kind() : divisions.get(0).vessel();
        List<Division> rows = divisions.stream().filter(row -> row.vessel().equals(kind)).toList();
        return rows.stream().filter(row -> row.capacity().in(Unit.MILLILITRE) >= capacity(vessel)).findFirst()
                .orElse(rows.get(rows.size() - 1)).division();
    }

    /**
     * What a liquid is added from drop by drop: the smallest graduated pipette that holds all of it, else the largest, filled
     * again; empty where the studio lists none.
     *
     * @param most how much is added at most
     */
    public Optional<Preparation.Dropper> dropper(Quantity most) {
        List<Studio.Vessel> pipettes = studio.glassware().stream().filter(vessel -> vessel.kind().equals(PIPETTE))
                .sorted(Comparator.comparingDouble(MeasureChoice::capacity)).toList();
        return pipettes.stream().filter(vessel -> capacity(vessel) >= most.highIn(Unit.MILLILITRE)).findFirst()
                .or(() -> pipettes.stream().reduce((one, larger) -> larger)).map(vessel -> new Preparation.Dropper(name(vessel),
                        (int) Measuring.fillings(Quantity.of(most.high(), most.unit()), vessel.volume()).value()));
    }

    private String name(Studio.Vessel vessel) {
        return phrases.say("{capacity} mL {vessel}, class {grade}", "capacity", Reading.number(capacity(vessel)),
                "vessel", phrases.of(vessel.kind()), "grade", vessel.grade());
    }

    private Optional<Choice> forMass(Quantity amount) {
        Quantity wanted = amount.exact();
        return studio.balances().stream().filter(balance -> balance.most().in(Unit.GRAM) >= wanted.in(Unit.GRAM))
                .filter(balance -> Measuring.isFineEnough(balance.step(), wanted, coarsest))
                .min(Comparator.comparingDouble(balance -> balance.step().in(Unit.GRAM)))
                .map(balance -> new Choice(Measuring.shown(wanted, Measuring.handStep(wanted, balance.step())), phrases.of(balance.id()),
                        phrases.of(balance.id()),
                        Measuring.ofBalance(balance.step())));
    }
}
