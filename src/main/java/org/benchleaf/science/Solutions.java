package org.benchleaf.science;

import java.util.Optional;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Solutions of a solid, dilutions, and mixtures by parts. */
public final class Solutions {

    /**
     * What to weigh out.
     *
     * @param mass the solid
     * @param solventMass the solvent, where the strength is by mass; otherwise the solution is made up to its volume
     */
    public record Dissolving(Quantity mass, Optional<Quantity> solventMass) {
    }

    /**
     * What to measure out.
     *
     * @param stockVolume the stock
     * @param diluentVolume the diluent; empty for shares by volume, since such volumes need not add up
     */
    public record Dilution(Quantity stockVolume, Optional<Quantity> diluentVolume) {
    }

    /**
     * Two parts of a mixture.
     *
     * @param first the mass of the first
     * @param second the mass of the second
     * @param massFraction the share of the first in the whole
     */
    public record Parts(Quantity first, Quantity second, Quantity massFraction) {
    }

    private Solutions() {
    }

    /**
     * Works out the solid for a volume of solution whose strength is a mass per volume.
     *
     * <p>Formula: m = c V. The solution is made up to its volume.
     *
     * <p>Units: any mass per volume, any volume; result in g. 1 % m/v is 1 g in 100 mL of solution.
     *
     * <p>Range: strength 0 or more, volume above 0.
     *
     * <p>Source: definition of mass concentration.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Dissolving byVolume(Quantity strength, Quantity volume) {
        double mass = Require.atLeastZero("strength", strength, Unit.KILOGRAM_PER_CUBIC_METRE)
                * Require.aboveZero("volume", volume, Unit.CUBIC_METRE);
        return new Dissolving(Quantity.of(mass * 1000, Unit.GRAM), Optional.empty());
    }

    /**
     * Works out solid and solvent for a mass of solution whose strength is a share by mass.
     *
     * <p>Formula: m = w M; solvent = M − m.
     *
     * <p>Units: % m/m; masses in g.
     *
     * <p>Range: 0 to 100 % m/m, mass above 0.
     *
     * <p>Source: definition of mass fraction.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Dissolving byMass(Quantity strength, Quantity whole) {
        double share = Require.within("strength", strength, 0, 100, Unit.PERCENT_BY_MASS,
                "definition of mass fraction") / 100;
        double mass = Require.aboveZero("mass", whole, Unit.GRAM);
        return new Dissolving(Quantity.of(mass * share, Unit.GRAM),
                Optional.of(Quantity.of(mass - mass * share, Unit.GRAM)));
    }

    /**
     * Works out the solid for a volume of solution whose strength is an amount per volume.
     *
     * <p>Formula: m = c M V. The solution is made up to its volume.
     *
     * <p>Units: mol/L, g/mol, any volume; result in g.
     *
     * <p>Range: strength 0 or more, molar mass and volume above 0.
     *
     * <p>Source: definition of amount concentration.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Dissolving byAmount(Quantity strength, Quantity volume, Quantity molarMass) {
        double moles = Require.atLeastZero("strength", strength, Unit.MOLE_PER_LITRE)
                * Require.aboveZero("volume", volume, Unit.LITRE);
        return new Dissolving(Quantity.of(moles * Require.aboveZero("molar-mass", molarMass, Unit.GRAM_PER_MOLE),
                Unit.GRAM), Optional.empty());
    }

    /**
     * Works out stock and diluent for a wanted volume of a weaker solution.
     *
     * <p>Formula: V₁ = c₂ V₂ / c₁, because the dissolved amount stays the same; diluent = V₂ − V₁, for dilute
     * solutions whose volumes add up.
     *
     * <p>Units: both strengths of one kind; volumes in mL.
     *
     * <p>Range: 0 ≤ c₂ ≤ c₁ and c₁ &gt; 0; strengths per volume, not by mass.
     *
     * <p>Source: conservation of the dissolved amount.
     *
     * @throws OutsideRange if the solution would be stronger than its stock, or the strengths are of two kinds
     */
    public static Dilution dilution(Quantity stock, Quantity strength, Quantity volume) {
        Dimension kind = stock.dimension();
        if (strength.dimension() != kind) {
            throw new OutsideRange("strength", strength.dimension().words(), kind.words() + ", as the stock",
                    "strengths of two kinds cannot be divided by each other");
        }
        double from = Require.aboveZero("stock", stock, stock.unit());
        double to = Require.atLeastZero("strength", strength, stock.unit());
        if (to > from) {
            throw new OutsideRange("strength", to + " " + stock.unit().symbol(),
                    "0 to " + from + " " + stock.unit().symbol() + ", the strength of the stock",
                    "a diluent can only weaken a stock");
        }
        double whole = Require.aboveZero("volume", volume, Unit.MILLILITRE);
        double stockVolume = whole * to / from;
        return new Dilution(Quantity.of(stockVolume, Unit.MILLILITRE), kind == Dimension.VOLUME_FRACTION
                ? Optional.empty() : Optional.of(Quantity.of(whole - stockVolume, Unit.MILLILITRE)));
    }

    /**
     * Works out the two masses of a mixture given in parts.
     *
     * <p>Formula: first = M a / (a + b); second = M b / (a + b). "1 + 5" is one part and five parts, six in all.
     *
     * <p>Units: plain numbers and a mass; result in g and % m/m.
     *
     * <p>Range: both parts above 0, mass above 0.
     *
     * <p>Source: definition of parts by mass.
     *
     * @throws OutsideRange if a part or the mass is not above 0
     */
    public static Parts parts(Quantity firstPart, Quantity secondPart, Quantity total) {
        double a = Require.aboveZero("parts", firstPart, Unit.NONE);
        double b = Require.aboveZero("parts", secondPart, Unit.NONE);
        double mass = Require.aboveZero("total", total, Unit.GRAM);
        return new Parts(Quantity.of(mass * a / (a + b), Unit.GRAM), Quantity.of(mass * b / (a + b), Unit.GRAM),
                Quantity.of(100 * a / (a + b), Unit.PERCENT_BY_MASS));
    }
}
