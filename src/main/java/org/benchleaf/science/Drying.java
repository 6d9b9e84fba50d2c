package org.benchleaf.science;

import java.util.Optional;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Water in a drying sheet, followed by weighing. */
public final class Drying {

    /** How much of its own side a blotter may be short; common practice, no source. */
    private static final double SHORT = 0.01;

    /**
     * The state of a damp sheet.
     *
     * @param solids the share of it that is not water
     * @param water the water in it
     */
    public record Solids(Quantity solids, Quantity water) {
    }

    /**
     * A sheet at a share of solids.
     *
     * @param mass what it weighs, water included
     * @param water the water in it
     */
    public record Wetness(Quantity mass, Quantity water) {
    }

    /**
     * How fast a sheet dries.
     *
     * @param rate the share of the water still there that leaves in a time
     * @param time from the second weighing to the wanted state; empty if it is past that state already
     */
    public record Rate(Quantity rate, Optional<Quantity> time) {
    }

    /**
     * Blotters for taking up the water of a sheet.
     *
     * @param perChange for each set
     * @param total for the first set and every change
     */
    public record Blotters(Quantity perChange, Quantity total) {
    }

    /**
     * Blotters laid side by side over a sheet.
     *
     * @param beside on one face
     * @param cover on both faces, all layers
     */
    public record Covering(Quantity beside, Quantity cover) {
    }

    private Drying() {
    }

    /**
     * Works out what share of a damp sheet is solid.
     *
     * <p>Formula: solids = dry / now; water = now − dry.
     *
     * <p>Units: masses in g, result in % and g.
     *
     * <p>Range: 0 &lt; dry ≤ now.
     *
     * <p>Source: definition of solids content.
     *
     * @throws OutsideRange if the sheet weighs less than when dry
     */
    public static Solids solids(Quantity dry, Quantity now) {
        double bone = Require.aboveZero("dry", dry, Unit.GRAM);
        double damp = atLeastDry("now", now, bone);
        return new Solids(Quantity.of(100 * bone / damp, Unit.PERCENT), Quantity.of(damp - bone, Unit.GRAM));
    }

    /**
     * Works out the rate of drying from two weighings, and the time from the second to a wanted share of solids.
     *
     * <p>Formula: u = (m − dry) / dry; k = ln(u₁ / u₂) / Δt; time = ln(u₂ / u) / k with u = (1 − s) / s.
     *
     * <p>Units: masses in g, time in min, solids in %; result in 1/min and min.
     *
     * <p>Range: dry &lt; second &lt; first; time above 0; solids above 0 and below 100 %. Holds between changes of
     * blotter only.
     *
     * <p>Source: exponential drying, common practice, no source.
     *
     * @throws OutsideRange if the sheet did not lose water, or a value lies outside its range
     */
    public static Rate rate(Quantity dry, Quantity first, Quantity second, Quantity between, Quantity to) {
        double bone = Require.aboveZero("dry", dry, Unit.GRAM);
        double before = waterPerDry("first", first, bone);
        double after = waterPerDry("second", second, bone);
        if (after >= before) {
            throw new OutsideRange("second", Clause.value(second.in(Unit.GRAM) + " g"),
                    Clause.of("less than {most}, the first weighing", "most", first.in(Unit.GRAM) + " g"), "a drying sheet loses mass");
        }
        double rate = StrictMath.log(before / after) / Require.aboveZero("between", between, Unit.MINUTE);
        double solids = Require.within("to", to, 1, 99.9, Unit.PERCENT, "definition of solids content") / 100;
        double wanted = (1 - solids) / solids;
        return new Rate(Quantity.of(rate, Unit.PER_MINUTE), wanted > after ? Optional.empty()
                : Optional.of(Quantity.of(StrictMath.log(after / wanted) / rate, Unit.MINUTE)));
    }

    /**
     * Works out how many blotters take up the water of a sheet.
     *
     * <p>Formula: per change = ⌈(wet − dry) / (blotter · uptake)⌉, so that each set could take up all of it; total =
     * per change · (changes + 1), counting the set before the first change.
     *
     * <p>Units: masses in g, uptake in g of water per g of blotter; counts out.
     *
     * <p>Range: dry ≤ wet; blotter mass and uptake above 0; 0 changes or more.
     *
     * <p>Source: common practice, no source.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Blotters blotters(Quantity wet, Quantity dry, Quantity blotterMass, Quantity uptake,
            Quantity changes) {
        double bone = Require.aboveZero("dry", dry, Unit.GRAM);
        double water = atLeastDry("wet", wet, bone) - bone;
        double takes = Require.aboveZero("blotter-mass", blotterMass, Unit.GRAM)
                * Require.aboveZero("uptake", uptake, Unit.GRAM_PER_GRAM);
        double perChange = Math.ceil(water / takes);
        int sets = Require.wholeAtLeast(0, "changes", changes) + 1;
        return new Blotters(Quantity.of(perChange, Unit.COUNT), Quantity.of(perChange * sets, Unit.COUNT));
    }

    /**
     * Works out what a sheet weighs at a share of solids, and the water in it.
     *
     * <p>Formula: m = dry / solids; water = m − dry.
     *
     * <p>Units: a mass in g, or a mass per area in g/m²; solids in %; both results in the unit of the dry mass.
     *
     * <p>Range: dry above 0; solids above 0 to 100 %.
     *
     * <p>Source: definition of solids content.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Wetness atSolids(Quantity dry, Quantity solids) {
        Unit unit = dry.dimension() == Dimension.MASS_PER_AREA ? Unit.GRAM_PER_SQUARE_METRE : Unit.GRAM;
        double bone = Require.aboveZero("dry", dry, unit);
        double share = Require.within("solids", solids, 1, 100, Unit.PERCENT, "definition of solids content") / 100;
        return new Wetness(Quantity.of(bone / share, unit), Quantity.of(bone / share - bone, unit));
    }

    /**
     * Works out how many blotters cover both faces of a sheet, turned whichever way takes fewer.
     *
     * <p>Formula: beside = min(⌈H / h⌉ ⌈W / w⌉, ⌈H / w⌉ ⌈W / h⌉); cover = 2 · layers · beside. A blotter that is short by
     * less than 1 % of a side still covers it.
     *
     * <p>Units: lengths and a count in; counts out.
     *
     * <p>Range: lengths above 0; at least one layer.
     *
     * <p>Source: geometry; laying blotters side by side, and the 1 %, are common practice, no source.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Covering covering(Quantity height, Quantity width, Quantity blotterHeight, Quantity blotterWidth,
            Quantity layers) {
        double high = Require.aboveZero("height", height, Unit.MILLIMETRE);
        double wide = Require.aboveZero("width", width, Unit.MILLIMETRE);
        double h = Require.aboveZero("blotter-height", blotterHeight, Unit.MILLIMETRE);
        double w = Require.aboveZero("blotter-width", blotterWidth, Unit.MILLIMETRE);
        double beside = Math.min(along(high, h) * along(wide, w), along(high, w) * along(wide, h));
        double faces = 2.0 * Require.wholeAtLeast(1, "layers", layers);
        return new Covering(Quantity.of(beside, Unit.COUNT), Quantity.of(faces * beside, Unit.COUNT));
    }

    private static double along(double side, double blotter) {
        return Math.max(1, Math.ceil(side / blotter - SHORT));
    }

    /**
     * Works out how many blotters each set takes, and all sets together.
     *
     * <p>Formula: per change = max(for water, cover); total = per change · (changes + 1), counting the set before the first
     * change.
     *
     * <p>Units: counts in and out.
     *
     * <p>Range: counts of 0 or more.
     *
     * <p>Source: common practice, no source.
     *
     * @throws OutsideRange if a count is not a whole number
     */
    public static Blotters sets(Quantity forWater, Quantity cover, Quantity changes) {
        double each = Math.max(Require.wholeAtLeast(0, "for-water", forWater), Require.wholeAtLeast(0, "cover", cover));
        int sets = Require.wholeAtLeast(0, "changes", changes) + 1;
        return new Blotters(Quantity.of(each, Unit.COUNT), Quantity.of(each * sets, Unit.COUNT));
    }

    private static double waterPerDry(String input, Quantity mass, double dry) {
        double grams = mass.in(Unit.GRAM);
        if (!(grams > dry)) {
            throw new OutsideRange(input, Clause.value(grams + " g"), Clause.of("more than {dry}, the dry mass", "dry", dry + " g"),
                    "a sheet with no water left cannot dry");
        }
        return (grams - dry) / dry;
    }

    private static double atLeastDry(String input, Quantity mass, double dry) {
        double grams = mass.in(Unit.GRAM);
        if (!(grams >= dry)) {
            throw new OutsideRange(input, Clause.value(grams + " g"), Clause.of("{dry} or more, the dry mass", "dry", dry + " g"),
                    "a damp sheet weighs at least as much as a dry one");
        }
        return grams;
    }
}
