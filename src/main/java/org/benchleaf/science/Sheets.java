package org.benchleaf.science;

import java.util.List;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** A sheet by its size: its mass, its change of size, the weight on it, its carrier, its lining, its tears and losses. */
public final class Sheets {

    /** Standard acceleration of gravity, m/s². Source: CGPM 1901, exact. */
    private static final double GRAVITY = 9.80665;
    /** A step that was just reached is one, whatever the last binary place says. */
    private static final double LAST_PLACE = 1e-9;

    /**
     * What mending takes.
     *
     * @param area strip of tissue in all
     * @param pieces into how many pieces it is torn
     * @param tissueMass its mass
     * @param pasteMass the paste it needs, waste included
     */
    public record Mending(Quantity area, Quantity pieces, Quantity tissueMass, Quantity pasteMass) {
    }

    private Sheets() {
    }

    /**
     * Mass of a sheet of even mass per area.
     *
     * <p>Formula: m = grammage · height · width.
     *
     * <p>Units: g/m² and lengths in; g out.
     *
     * <p>Range: grammage, height and width above 0.
     *
     * <p>Source: definition of grammage (ISO 536).
     *
     * @throws OutsideRange if a value is not above 0
     */
    public static Quantity mass(Quantity grammage, Quantity height, Quantity width) {
        return Quantity.of(Require.aboveZero("grammage", grammage, Unit.GRAM_PER_SQUARE_METRE)
                * Require.aboveZero("height", height, Unit.METRE) * Require.aboveZero("width", width, Unit.METRE),
                Unit.GRAM);
    }

    /**
     * Whether a length changed, and by no more than one step of what read it.
     *
     * <p>Formula: 0 < |after − before| ≤ step.
     *
     * <p>Units: lengths.
     *
     * <p>Range: any.
     *
     * <p>Source: definition.
     */
    public static boolean changedWithin(Quantity before, Quantity after, Quantity step) {
        double change = Math.abs(after.in(Unit.MILLIMETRE) - before.in(Unit.MILLIMETRE));
        return change > 0 && change <= step.in(Unit.MILLIMETRE) * (1 + LAST_PLACE);
    }

    /**
     * Apparent density of paper.
     *
     * <p>Formula: ρ = grammage / thickness.
     *
     * <p>Units: g/m² and a length in; kg/m³ out.
     *
     * <p>Range: grammage and thickness above 0.
     *
     * <p>Source: definition of the apparent density (ISO 534).
     *
     * @throws OutsideRange if a value is not above 0
     */
    public static Quantity density(Quantity grammage, Quantity thickness) {
        return Quantity.of(Require.aboveZero("grammage", grammage, Unit.GRAM_PER_SQUARE_METRE) / 1000
                / Require.aboveZero("thickness", thickness, Unit.METRE), Unit.KILOGRAM_PER_CUBIC_METRE);
    }

    /**
     * Length of a side with a margin at both ends, for a carrier or a tray.
     *
     * <p>Formula: side + 2 margin.
     *
     * <p>Units: lengths in; mm out.
     *
     * <p>Range: side above 0; margin 0 or more.
     *
     * <p>Source: geometry.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Quantity withMargins(Quantity side, Quantity margin) {
        return Quantity.of(Require.aboveZero("side", side, Unit.MILLIMETRE)
                + 2 * Require.atLeastZero("margin", margin, Unit.MILLIMETRE), Unit.MILLIMETRE);
    }

    /**
     * Area of a lining that reaches over every edge of a sheet.
     *
     * <p>Formula: A = (height + 2 lap) (width + 2 lap).
     *
     * <p>Units: lengths in; cm² out.
     *
     * <p>Range: height and width above 0; lap 0 or more.
     *
     * <p>Source: geometry.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Quantity lining(Quantity height, Quantity width, Quantity lap) {
        double both = 2 * Require.atLeastZero("lap", lap, Unit.CENTIMETRE);
        return Quantity.of((Require.aboveZero("height", height, Unit.CENTIMETRE) + both)
                * (Require.aboveZero("width", width, Unit.CENTIMETRE) + both), Unit.SQUARE_CENTIMETRE);
    }

    /**
     * Works out the pressure of a mass lying on a sheet.
     *
     * <p>Formula: P = m g / (h w), g = 9.80665 m/s².
     *
     * <p>Units: mass, lengths; result in kPa.
     *
     * <p>Range: mass 0 or more; height and width above 0.
     *
     * <p>Source: definition of pressure; standard gravity of the CGPM (1901).
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Quantity pressure(Quantity mass, Quantity height, Quantity width) {
        double force = Require.atLeastZero("mass", mass, Unit.KILOGRAM) * GRAVITY;
        double area = Require.aboveZero("height", height, Unit.METRE) * Require.aboveZero("width", width, Unit.METRE);
        return Quantity.of(force / area / 1000, Unit.KILOPASCAL);
    }

    /**
     * Works out by what share a length changed.
     *
     * <p>Formula: (after − before) / before.
     *
     * <p>Units: lengths; result in %.
     *
     * <p>Range: both above 0.
     *
     * <p>Source: definition of relative change.
     *
     * @throws OutsideRange if a length is not above 0
     */
    public static Quantity sizeChange(Quantity before, Quantity after) {
        double from = Require.aboveZero("before", before, Unit.MILLIMETRE);
        return Quantity.of(100 * (Require.aboveZero("after", after, Unit.MILLIMETRE) - from) / from, Unit.PERCENT);
    }

    /**
     * Works out by what share an area changed when both its sides did.
     *
     * <p>Formula: (1 + a)(1 + b) − 1.
     *
     * <p>Units: % in and out.
     *
     * <p>Range: above −100 %.
     *
     * <p>Source: geometry.
     *
     * @throws OutsideRange if a side has vanished
     */
    public static Quantity areaChange(Quantity change, Quantity acrossChange) {
        double along = Require.within("change", change, -100, 1e6, Unit.PERCENT, "a length cannot be negative") / 100;
        double across = Require.within("across-change", acrossChange, -100, 1e6, Unit.PERCENT,
                "a length cannot be negative") / 100;
        return Quantity.of(100 * (along + across + along * across), Unit.PERCENT);
    }

    /**
     * Works out the tissue and paste for a sheet's tears.
     *
     * <p>Formula: area = Σ (tear + 2 lap) · width; pieces = Σ ⌈(tear + 2 lap) / piece⌉; tissue = area · grammage;
     * paste = area · load · (1 + waste).
     *
     * <p>Units: lengths; tissue in g/m², paste in g/cm²; result in cm², a count, mg and g.
     *
     * <p>Range: at least one tear; tears, width and piece above 0; lap 0 or more; waste 0 to 500 %.
     *
     * <p>Source: geometry; loads are common practice, no source.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Mending mending(List<Quantity> tears, Quantity lap, Quantity width, Quantity piece, Quantity tissue,
            Quantity paste, Quantity waste) {
        double ends = 2 * Require.atLeastZero("lap", lap, Unit.CENTIMETRE);
        double longest = Require.aboveZero("piece", piece, Unit.CENTIMETRE);
        double length = 0;
        double pieces = 0;
        for (Quantity tear : tears) {
            double strip = Require.aboveZero("tears", tear, Unit.CENTIMETRE) + ends;
            length += strip;
            pieces += wholePieces(strip / longest);
        }
        if (tears.isEmpty()) {
            throw new OutsideRange("tears", Clause.of("none"), Clause.of("at least one tear"), "nothing to mend");
        }
        return ofArea(length * Require.aboveZero("width", width, Unit.CENTIMETRE), pieces, tissue, paste, waste);
    }

    /**
     * Works out the tissue and paste for losses and linings, each of which takes a piece of its own area.
     *
     * <p>Formula: area = Σ areas; pieces = how many areas; tissue = area · grammage; paste = area · load · (1 + waste).
     *
     * <p>Units: areas; tissue in g/m², paste in g/cm²; result in cm², a count, mg and g.
     *
     * <p>Range: at least one area; areas above 0; waste 0 to 500 %.
     *
     * <p>Source: geometry; loads are common practice, no source.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Mending patches(List<Quantity> areas, Quantity tissue, Quantity paste, Quantity waste) {
        double area = 0;
        for (Quantity one : areas) {
            area += Require.aboveZero("areas", one, Unit.SQUARE_CENTIMETRE);
        }
        if (areas.isEmpty()) {
            throw new OutsideRange("areas", Clause.of("none"), Clause.of("at least one area"), "nothing to cover");
        }
        return ofArea(area, areas.size(), tissue, paste, waste);
    }

    private static Mending ofArea(double area, double pieces, Quantity tissue, Quantity paste, Quantity waste) {
        double wasted = Require.within("waste", waste, 0, 500, Unit.PERCENT, "common practice, no source") / 100;
        return new Mending(Quantity.of(area, Unit.SQUARE_CENTIMETRE), Quantity.of(pieces, Unit.COUNT),
                Quantity.of(area * Require.atLeastZero("tissue", tissue, Unit.GRAM_PER_SQUARE_CENTIMETRE) * 1000,
                        Unit.MILLIGRAM),
                Quantity.of(area * Require.atLeastZero("paste", paste, Unit.GRAM_PER_SQUARE_CENTIMETRE)
                        * (1 + wasted), Unit.GRAM));
    }

    /** Rounds up, but not for a difference in the last place: a strip of 80 mm is two pieces of 40 mm. */
    private static double wholePieces(double pieces) {
        double nearest = Math.rint(pieces);
        return Math.abs(pieces - nearest) < 1e-9 ? nearest : Math.ceil(pieces);
    }
}
