package org.benchleaf.science;

import java.util.List;
import java.util.Optional;
import org.benchleaf.quantity.Clause;
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
     * One part of a mixture and what is left for the rest.
     *
     * @param part how much of its stock to measure out
     * @param rest how much of the rest
     * @param restShare the rest's share of the whole, in per cent
     */
    public record Mixture(Quantity part, Quantity rest, Quantity restShare) {
    }

    /**
     * One amount as a mass and as a volume.
     *
     * @param mass the mass
     * @param volume the volume
     */
    public record MassAndVolume(Quantity mass, Quantity volume) {
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
            throw new OutsideRange("strength", strength.dimension().clause(),
                    Clause.of("{kind}, as the stock", "kind", kind.clause()),
                    "strengths of two kinds cannot be divided by each other");
        }
        double from = Require.aboveZero("stock", stock, stock.unit());
        double to = Require.atLeastZero("strength", strength, stock.unit());
        if (to > from) {
            throw new OutsideRange("strength", Clause.value(to + " " + stock.unit().symbol()),
                    Clause.of("0 to {most}, the strength of the stock", "most", from + " " + stock.unit().symbol()),
                    "a diluent can only weaken a stock");
        }
        double whole = Require.aboveZero("volume", volume, Unit.MILLILITRE);
        double stockVolume = whole * to / from;
        return new Dilution(Quantity.of(stockVolume, Unit.MILLILITRE), kind == Dimension.VOLUME_FRACTION
                ? Optional.empty() : Optional.of(Quantity.of(whole - stockVolume, Unit.MILLILITRE)));
    }

    /**
     * Works out one part of a mixture given in parts.
     *
     * <p>Formula: amount = M n / Σ n. "1 + 5" is one part and five parts, six in all.
     *
     * <p>Units: plain numbers and a mass or a volume; result in the unit of the whole.
     *
     * <p>Range: every part and the whole above 0.
     *
     * <p>Source: definition of parts.
     *
     * @param parts the parts of each, at least two
     * @param which which of them is asked for, counted from 0
     * @param total the whole: a mass, or the volume of all before they are joined
     * @throws OutsideRange if a part or the whole is not above 0
     */
    public static Quantity part(List<Quantity> parts, int which, Quantity total) {
        double all = 0;
        for (Quantity part : parts) {
            all += Require.aboveZero("parts", part, Unit.NONE);
        }
        return Quantity.of(Require.aboveZero("total", total, total.unit()) * parts.get(which).value() / all,
                total.unit());
    }

    /**
     * Works out one part of a mixture whose parts have shares of the whole, and the rest.
     *
     * <p>Formula: part = M sₖ / cₖ; rest = M − Σ M s / c.
     *
     * <p>Units: shares and strengths of stocks of one kind, by mass with a mass or by volume with a volume; results in
     * the unit of the whole. By volume the parts are measured separately, before they are joined.
     *
     * <p>Range: shares above 0 and not above the strength of their stock; Σ s / c ≤ 1.
     *
     * <p>Source: definition of mass fraction and of volume fraction.
     *
     * @param shares of each part in the mixture
     * @param stocks how strong the stock of each part is
     * @param which which part is asked for, counted from 0
     * @param total the whole
     * @throws OutsideRange if a stock is too weak, or the stocks together leave no room
     */
    public static Mixture mixture(List<Quantity> shares, List<Quantity> stocks, int which, Quantity total) {
        double whole = Require.aboveZero("total", total, total.unit());
        double poured = 0;
        for (int i = 0; i < shares.size(); i++) {
            poured += poured(shares.get(i), stocks.get(i));
        }
        if (poured > 1 + 1e-12) {
            throw new OutsideRange("shares",
                    Clause.of("stocks that come to {share} of the whole", "share", 100 * poured + " %"),
                    Clause.of("shares and stocks that come to 100 % at most"), "a part cannot be larger than the whole");
        }
        double rest = Math.max(0, 1 - poured);
        return new Mixture(Quantity.of(whole * poured(shares.get(which), stocks.get(which)), total.unit()),
                Quantity.of(whole * rest, total.unit()), Quantity.of(100 * rest, Unit.PERCENT));
    }

    private static double poured(Quantity share, Quantity stock) {
        double wanted = Require.aboveZero("shares", share, stock.unit());
        double from = Require.aboveZero("stocks", stock, stock.unit());
        if (wanted > from * (1 + 1e-12)) {
            throw new OutsideRange("shares", Clause.value(wanted + " " + stock.unit().symbol()),
                    Clause.of("at most {most}, the strength of its stock", "most", from + " " + stock.unit().symbol()),
                    "a mixture cannot be stronger than its stock");
        }
        return wanted / from;
    }

    /**
     * Turns a mass into a volume or a volume into a mass.
     *
     * <p>Formula: V = m / ρ; m = V ρ.
     *
     * <p>Units: a mass or a volume, and a density of the same temperature; results in g and mL.
     *
     * <p>Range: amount 0 or more, density above 0.
     *
     * <p>Source: definition of density.
     *
     * @throws OutsideRange if the amount is below 0 or the density is not above 0
     */
    public static MassAndVolume byDensity(Quantity amount, Quantity density) {
        double gramsPerMillilitre = Require.aboveZero("density", density, Unit.KILOGRAM_PER_CUBIC_METRE) / 1000;
        if (amount.dimension() == Dimension.MASS) {
            double mass = Require.atLeastZero("amount", amount, Unit.GRAM);
            return new MassAndVolume(Quantity.of(mass, Unit.GRAM),
                    Quantity.of(mass / gramsPerMillilitre, Unit.MILLILITRE));
        }
        double volume = Require.atLeastZero("amount", amount, Unit.MILLILITRE);
        return new MassAndVolume(Quantity.of(volume * gramsPerMillilitre, Unit.GRAM),
                Quantity.of(volume, Unit.MILLILITRE));
    }
}
