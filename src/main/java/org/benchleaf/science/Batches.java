package org.benchleaf.science;

import java.util.List;
import java.util.Optional;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Decimal;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** What is used in all, and how much of it is made at a time. */
public final class Batches {

    /** The last places of a binary number must not make one step more. */
    private static final double NEARLY = 1e-9;

    /**
     * One part of a stock in so many of the whole.
     *
     * @param stock volume of the stock
     * @param diluent volume of what is added
     */
    public record OnePart(Quantity stock, Quantity diluent) {
    }

    private Batches() {
    }

    /**
     * Sum of amounts, each counted a number of times.
     *
     * <p>Formula: total = Σ amount · times; a sum of things counted is rounded up to whole ones.
     *
     * <p>Units: amounts of one dimension in; the unit of the first out.
     *
     * <p>Range: at least one amount; as many times as amounts; none below 0.
     *
     * <p>Source: definition.
     *
     * @throws OutsideRange if the amounts are of two dimensions, or the two lists differ in length
     */
    public static Quantity sum(List<Quantity> amounts, List<Quantity> times) {
        if (amounts.size() != times.size()) {
            throw new OutsideRange("times", Clause.of("{count} numbers", "count", times.size()),
                    Clause.of("{count} numbers, one for each amount", "count", amounts.size()),
                    "each amount is counted a number of times");
        }
        Unit unit = amounts.get(0).unit();
        double total = 0;
        for (int k = 0; k < amounts.size(); k++) {
            Quantity amount = amounts.get(k);
            if (amount.dimension() != unit.dimension()) {
                throw new OutsideRange("amounts", amount.dimension().clause(),
                        Clause.of("{kind} like the first", "kind", unit.dimension().clause()),
                        "only amounts of one kind can be added");
            }
            total += Require.atLeastZero("amounts", amount, unit) * Require.atLeastZero("times", times.get(k), Unit.NONE);
        }
        return Quantity.of(unit == Unit.COUNT ? Math.ceil(total - NEARLY) : total, unit);
    }

    /**
     * Amount made at a time, chosen so that it suffices for the high end of what is needed.
     *
     * <p>Formula: the larger of ⌈needed · (1 + shrinking) / batches⌉ and least, rounded up to two significant figures and
     * not finer than a step.
     *
     * <p>Units: masses or volumes in; g or mL out.
     *
     * <p>Range: needed, least or both; at least one batch; shrinking 0 to 50 %.
     *
     * <p>Source: common practice, no source.
     *
     * @throws OutsideRange if neither amount is given, or a value lies outside its range
     */
    public static Quantity batch(Optional<Quantity> needed, Quantity batches, Quantity shrinking, Optional<Quantity> least,
            Optional<Quantity> step) {
        Quantity first = needed.or(() -> least).orElseThrow(() -> new OutsideRange("needed", Clause.of("nothing"),
                Clause.of("an amount, or the least that can be made well"), "something must be needed to be made"));
        Unit unit = first.dimension() == Dimension.MASS ? Unit.GRAM : Unit.MILLILITRE;
        double chosen = 0;
        if (needed.isPresent()) {
            double smallest = step.isPresent() ? Require.atLeastZero("step", step.get(), unit) : 0;
            chosen = roundedUp(eachTime(high(needed.get()), batches, shrinking).in(unit), smallest);
        }
        double floor = least.isPresent() ? Require.atLeastZero("least", high(least.get()), unit) : 0;
        return Quantity.of(Math.max(chosen, floor), unit);
    }

    /**
     * Amount needed at a time, when so many batches are made and each may shrink.
     *
     * <p>Formula: needed · (1 + shrinking) / batches.
     *
     * <p>Units: a mass or volume in; its unit out.
     *
     * <p>Range: needed 0 or more; at least one batch; shrinking 0 to 50 %.
     *
     * <p>Source: common practice, no source.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Quantity eachTime(Quantity needed, Quantity batches, Quantity shrinking) {
        double share = Require.within("shrinking", shrinking, 0, 50, Unit.PERCENT, "common practice, no source") / 100;
        return Quantity.of(Require.atLeastZero("needed", needed, needed.unit()) * (1 + share)
                / Require.wholeAtLeast(1, "batches", batches), needed.unit());
    }

    /**
     * Whether an amount comes to what is needed, with its high end.
     *
     * <p>Units: amounts of one dimension; two spellings of one amount may differ in the last place.
     *
     * <p>Source: definition.
     */
    public static boolean suffices(Quantity amount, Quantity needed) {
        return amount.highIn(needed.unit()) >= needed.value() * (1 - NEARLY);
    }

    /**
     * Whether all that is made is far more than the high end of what is needed.
     *
     * <p>Formula: made · batches &gt; times · needed.
     *
     * <p>Units: amounts of one dimension.
     *
     * <p>Range: at least one batch; times 0 or more.
     *
     * <p>Source: definition.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static boolean isFarMore(Quantity made, Quantity batches, Quantity needed, Quantity times) {
        return made.in(needed.unit()) * Require.wholeAtLeast(1, "batches", batches)
                > Require.atLeastZero("times", times, Unit.NONE) * needed.high();
    }

    /**
     * How many times an amount is made so that a share is over.
     *
     * <p>Formula: 1 + share.
     *
     * <p>Units: % in, a plain number out.
     *
     * <p>Range: share 0 % or more.
     *
     * <p>Source: definition.
     *
     * @throws OutsideRange if the share is below 0
     */
    public static Quantity withSpare(Quantity share) {
        return Quantity.number(1 + Require.atLeastZero("spare", share, Unit.PERCENT) / 100);
    }

    private static Quantity high(Quantity amount) {
        return Quantity.of(amount.high(), amount.unit());
    }

    private static double roundedUp(double amount, double smallestStep) {
        double step = Math.max(amount <= 0 ? 1 : StrictMath.pow(10, Math.floor(StrictMath.log10(amount)) - 1), smallestStep);
        double steps = amount / step;
        double nearest = Math.rint(steps);
        double whole = Math.abs(steps - nearest) < NEARLY ? nearest : Math.ceil(steps);
        return decimal(whole * step);
    }

    /** Without the last places that decimal steps leave in binary numbers. */
    private static double decimal(double value) {
        return Decimal.of(value).significant(12).value();
    }

    /**
     * Volumes of a stock and of what is added, for one part in so many.
     *
     * <p>Formula: stock = V / n; diluent = V − V / n.
     *
     * <p>Units: a plain number and a volume in; mL out.
     *
     * <p>Range: one part in 1 or more; volume above 0.
     *
     * <p>Source: definition.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static OnePart oneIn(Quantity oneIn, Quantity volume) {
        double parts = parts(oneIn);
        double whole = Require.aboveZero("volume", volume, Unit.MILLILITRE);
        return new OnePart(Quantity.of(whole / parts, Unit.MILLILITRE), Quantity.of(whole - whole / parts, Unit.MILLILITRE));
    }

    /**
     * Strength of a stock after one part of it came into so many.
     *
     * <p>Formula: c = stock / n.
     *
     * <p>Units: any strength in, the same out.
     *
     * <p>Range: one part in 1 or more; stock 0 or more.
     *
     * <p>Source: definition.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Quantity weakened(Quantity stock, Quantity oneIn) {
        return Quantity.of(Require.atLeastZero("stock", stock, stock.unit()) / parts(oneIn), stock.unit());
    }

    private static double parts(Quantity oneIn) {
        return Require.within("one-in", oneIn, 1, 1e6, Unit.NONE, "a part is not more than the whole");
    }
}
