package org.benchleaf.science;

import java.util.Optional;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** The acid that a sheet can still take up, measured by titration or bounded from what a bath can leave. */
public final class AlkalineReserve {

    /** Two per cent of calcium carbonate, 20 g/kg. Sources: ISO 9706, ISO 11108 and ANSI/NISO Z39.48-1992. */
    private static final double THRESHOLD_PERCENT = 2;
    /** A sheet of exactly two per cent reaches the threshold, whatever the last binary place says. */
    private static final double LAST_PLACE = 1e-9;

    /**
     * A reserve found by titration.
     *
     * @param reserve moles of acid per kilogram of dry paper; moles of acid, not of carbonate
     * @param carbonate the same as calcium carbonate
     */
    public record Reserve(Quantity reserve, Quantity carbonate) {

        /** Whether it reaches the two per cent that the standards for permanent paper ask for. */
        public boolean meetsThreshold() {
            return carbonate.in(Unit.PERCENT_BY_MASS) >= THRESHOLD_PERCENT - LAST_PLACE;
        }
    }

    /**
     * The most that one bath can leave.
     *
     * @param carbonatePerArea calcium carbonate on an area
     * @param carbonate its share of the sheet
     * @param reserve moles of acid per kilogram
     * @param bathsToTwoPerCent how many such baths, each dried in, would be needed; empty for a bath without calcium
     */
    public record Ceiling(Quantity carbonatePerArea, Quantity carbonate, Quantity reserve,
            Optional<Quantity> bathsToTwoPerCent) {
    }

    private AlkalineReserve() {
    }

    /**
     * Works out the reserve of a sample from a back titration.
     *
     * <p>Formula: reserve = (Vₐ cₐ − V_b c_b) / m, m = sample (1 − moisture); carbonate = reserve · 100.087 / 2.
     *
     * <p>Units: g, mL, mol/L; result in mol of acid per kg of dry paper and % m/m CaCO₃.
     *
     * <p>Range: sample above 0; moisture 0 to 99 % m/m; no more base than acid.
     *
     * <p>Source: principle of TAPPI T 553 and ISO 10716; molar mass from IUPAC weights.
     *
     * @throws OutsideRange if the base is more than the acid, or a value lies outside its range
     */
    public static Reserve byTitration(Quantity sample, Quantity moisture, Quantity acidVolume, Quantity acid,
            Quantity baseVolume, Quantity base) {
        double dry = Require.aboveZero("sample", sample, Unit.GRAM)
                * (1 - Require.within("moisture", moisture, 0, 99, Unit.PERCENT_BY_MASS, "a sheet, not a pulp") / 100);
        double added = Require.aboveZero("acid-volume", acidVolume, Unit.MILLILITRE)
                * Require.aboveZero("acid", acid, Unit.MOLE_PER_LITRE);
        double strength = Require.aboveZero("base", base, Unit.MOLE_PER_LITRE);
        double back = Require.atLeastZero("base-volume", baseVolume, Unit.MILLILITRE) * strength;
        if (back > added) {
            throw new OutsideRange("base-volume", Clause.value(baseVolume.in(Unit.MILLILITRE) + " mL"),
                    Clause.of("0 to {most}, which uses up all the acid", "most", added / strength + " mL"),
                    "more base than acid means that the sample holds no reserve but acid");
        }
        return reserve((added - back) / dry);
    }

    /**
     * Works out the reserve that goes with a share of calcium carbonate.
     *
     * <p>Formula: reserve = 2 w / 100.087, w in g per kg.
     *
     * <p>Units: % m/m in, mol of acid per kg out.
     *
     * <p>Range: 0 to 100 % m/m.
     *
     * <p>Source: one carbonate takes up two acids.
     *
     * @throws OutsideRange if the share lies outside the range
     */
    public static Quantity ofCarbonate(Quantity carbonate) {
        double percent = Require.within("carbonate", carbonate, 0, 100, Unit.PERCENT_BY_MASS,
                "definition of mass fraction");
        return Quantity.of(2 * percent * 10 / MolarMass.CALCIUM_CARBONATE.gramsPerMole(), Unit.MOLE_PER_KILOGRAM);
    }

    /**
     * Works out the most reserve that one bath can leave, if all its calcium stays in the sheet as carbonate.
     *
     * <p>Formula: per area = uptake · c · 100.087; share = per area / grammage; reserve = 2 · uptake · c / grammage.
     *
     * <p>Units: g/m², mol/kg of bath; result in g/m², % m/m, mol/kg and a count.
     *
     * <p>Range: grammage and uptake above 0; calcium 0 to 0.1 mol/kg.
     *
     * <p>Source: conservation of the calcium. A ceiling, never a result.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Ceiling ceiling(Quantity grammage, Quantity uptake, Quantity calcium) {
        double paper = Require.aboveZero("grammage", grammage, Unit.GRAM_PER_SQUARE_METRE);
        double taken = Require.aboveZero("uptake", uptake, Unit.GRAM_PER_SQUARE_METRE);
        double moles = taken / 1000 * Require.within("calcium", calcium, 0, 0.1, Unit.MOLE_PER_KILOGRAM,
                "several times what limewater or calcium bicarbonate can hold");
        double perArea = moles * MolarMass.CALCIUM_CARBONATE.gramsPerMole();
        double percent = 100 * perArea / paper;
        return new Ceiling(Quantity.of(perArea, Unit.GRAM_PER_SQUARE_METRE),
                Quantity.of(percent, Unit.PERCENT_BY_MASS),
                Quantity.of(2000 * moles / paper, Unit.MOLE_PER_KILOGRAM), percent == 0 ? Optional.empty()
                        : Optional.of(Quantity.of(Math.ceil(THRESHOLD_PERCENT / percent), Unit.COUNT)));
    }

    private static Reserve reserve(double molesPerKilogram) {
        return new Reserve(Quantity.of(molesPerKilogram, Unit.MOLE_PER_KILOGRAM),
                Quantity.of(molesPerKilogram * MolarMass.CALCIUM_CARBONATE.gramsPerMole() / 20, Unit.PERCENT_BY_MASS));
    }
}
