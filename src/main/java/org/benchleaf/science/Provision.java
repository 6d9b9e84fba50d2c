package org.benchleaf.science;

import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** What is laid out, bottled and bought for several people at once. */
public final class Provision {

    /** The last places of a binary number must not make one piece more. */
    private static final double NEARLY = 1e-9;

    /**
     * Vessels for a volume.
     *
     * @param count how many, at least 1
     * @param each what goes into one, all filled alike
     */
    public record Containers(Quantity count, Quantity each) {
    }

    /**
     * What is bought.
     *
     * @param missing what the shelf lacks; nothing if it lacks nothing
     * @param packs how many packs make up for it
     * @param left what is over in the end
     */
    public record Order(Quantity missing, Quantity packs, Quantity left) {
    }

    private Provision() {
    }

    /**
     * Whole pieces for several users, with spare.
     *
     * <p>Formula: the larger of ⌈each · users · (1 + spare)⌉ and each · users + extra.
     *
     * <p>Units: counts and % in, a count out.
     *
     * <p>Range: each 0 or more; users 1 or more; spare 0 to 1000 %; extra 0 or more.
     *
     * <p>Source: common practice, no source.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Quantity pieces(Quantity each, Quantity users, Quantity spare, Quantity extra) {
        double all = Require.atLeastZero("each", each, Unit.COUNT) * Require.wholeAtLeast(1, "users", users);
        double share = Require.within("spare", spare, 0, 1000, Unit.PERCENT, "common practice, no source") / 100;
        return Quantity.count((int) Math.max(Math.ceil(all * (1 + share) - NEARLY),
                Math.ceil(all + Require.atLeastZero("extra", extra, Unit.COUNT) - NEARLY)));
    }

    /**
     * Vessels into which a volume is shared out evenly.
     *
     * <p>Formula: count = ⌈V / (full · holds)⌉, at least 1; each = V / count.
     *
     * <p>Units: volumes and % in; a count and mL out.
     *
     * <p>Range: volume 0 or more; holds above 0; full 1 to 100 %.
     *
     * <p>Source: definition.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Containers containers(Quantity volume, Quantity holds, Quantity full) {
        double all = Require.atLeastZero("volume", high(volume), Unit.MILLILITRE);
        double one = Require.aboveZero("holds", holds, Unit.MILLILITRE)
                * Require.within("full", full, 1, 100, Unit.PERCENT, "a vessel holds no more than it holds") / 100;
        double count = Math.max(1, Math.ceil(all / one - NEARLY));
        return new Containers(Quantity.of(count, Unit.COUNT), Quantity.of(all / count, Unit.MILLILITRE));
    }

    /**
     * Packs to buy for what the shelf lacks.
     *
     * <p>Formula: missing = max(0, needed − stock); packs = ⌈missing / pack⌉; left = stock + packs · pack − needed.
     *
     * <p>Units: amounts of one dimension in; the unit of the first, and a count, out.
     *
     * <p>Range: needed and stock 0 or more; pack above 0.
     *
     * <p>Source: definition.
     *
     * @throws OutsideRange if a value lies outside its range or the amounts are of two dimensions
     */
    public static Order order(Quantity needed, Quantity stock, Quantity pack) {
        Unit unit = needed.unit();
        if (stock.dimension() != unit.dimension() || pack.dimension() != unit.dimension()) {
            throw new OutsideRange("pack",
                    Clause.of("{kind} and {other}", "kind", pack.dimension().clause(), "other", stock.dimension().clause()),
                    Clause.of("{kind} like what is needed", "kind", unit.dimension().clause()), "only amounts of one kind can be compared");
        }
        double wanted = Require.atLeastZero("needed", high(needed), unit);
        double there = Require.atLeastZero("stock", stock, unit);
        double one = Require.aboveZero("pack", pack, unit);
        double missing = Math.max(0, wanted - there);
        double packs = Math.ceil(missing / one - NEARLY);
        return new Order(Quantity.of(missing, unit), Quantity.of(packs, Unit.COUNT),
                Quantity.of(Math.max(0, there + packs * one - wanted), unit));
    }

    /**
     * Working places along a bench.
     *
     * <p>Formula: places = ⌊there / each⌋.
     *
     * <p>Units: lengths in, a count out.
     *
     * <p>Range: there 0 or more; each above 0.
     *
     * <p>Source: definition.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Quantity benchPlaces(Quantity there, Quantity each) {
        double all = Require.atLeastZero("there", Quantity.of(there.low(), there.unit()), Unit.MILLIMETRE);
        return Quantity.of(Math.floor(all / Require.aboveZero("each", high(each), Unit.MILLIMETRE) + NEARLY), Unit.COUNT);
    }

    /** What is laid in or bought must suffice for the high end. */
    private static Quantity high(Quantity amount) {
        return Quantity.of(amount.high(), amount.unit());
    }
}
