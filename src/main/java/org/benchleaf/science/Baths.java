package org.benchleaf.science;

import java.util.List;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Baths: how much water, how well it rinses, how long a sheet must soak. */
public final class Baths {

    /**
     * The water of a washing.
     *
     * @param volume one bath
     * @param total all baths of all sheets
     */
    public record Volumes(Quantity volume, Quantity total) {
    }

    /**
     * The time of a washing.
     *
     * @param change from lifting the sheet out of one bath to laying it into the next
     * @param wet from laying the sheet into the first bath to lifting it out of the last
     * @param total with filling the first bath
     */
    public record Times(Quantity change, Quantity wet, Quantity total) {
    }

    private Baths() {
    }

    /**
     * Works out the water for a sheet in its tray.
     *
     * <p>Formula: V = (h + 2 m) (w + 2 m) d; total = V · baths · sheets, each sheet in a tray of its own.
     *
     * <p>Units: lengths in mm, result in L.
     *
     * <p>Range: height, width and depth above 0; margin 0 or more; at least one bath and one sheet.
     *
     * <p>Source: geometry.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Volumes volumes(Quantity height, Quantity width, Quantity margin, Quantity depth, Quantity baths,
            Quantity sheets) {
        double m = Require.atLeastZero("margin", margin, Unit.METRE);
        double volume = (Require.aboveZero("height", height, Unit.METRE) + 2 * m)
                * (Require.aboveZero("width", width, Unit.METRE) + 2 * m)
                * Require.aboveZero("depth", depth, Unit.METRE) * 1000;
        int times = Require.wholeAtLeast(1, "baths", baths);
        int trays = Require.wholeAtLeast(1, "sheets", sheets);
        return new Volumes(Quantity.of(volume, Unit.LITRE), Quantity.of(volume * times * trays, Unit.LITRE));
    }

    /**
     * Works out how long a washing takes.
     *
     * <p>Formula: c = changing + adjusting; wet = Σ t + (n − 1) c; total = filling + wet.
     *
     * <p>Units: times in any unit of time; results in min.
     *
     * <p>Range: filling, changing, adjusting and each bath 0 or more; at least one bath, and one time for all
     * or one for each.
     *
     * <p>Source: definition; one change fewer than baths.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Times times(Quantity filling, Quantity changing, Quantity adjusting, List<Quantity> each, Quantity baths) {
        double before = Require.atLeastZero("filling", filling, Unit.MINUTE);
        double change = Require.atLeastZero("changing", changing, Unit.MINUTE)
                + Require.atLeastZero("adjusting", adjusting, Unit.MINUTE);
        int times = Require.wholeAtLeast(1, "baths", baths);
        double lying = each.stream().mapToDouble(one -> Require.atLeastZero("each", one, Unit.MINUTE)).sum();
        double wet = lying * (each.size() == 1 ? times : 1) + (times - 1) * change;
        return new Times(Quantity.of(change, Unit.MINUTE), Quantity.of(wet, Unit.MINUTE), Quantity.of(before + wet, Unit.MINUTE));
    }

    /**
     * Works out what share of a dissolved substance is left in a sheet after several fresh baths.
     *
     * <p>Formula: (r / (r + b))ⁿ, with r held by the sheet, b the bath and n the number of baths.
     *
     * <p>Units: volumes; result in %.
     *
     * <p>Range: held and bath above 0; 0 baths or more. Ideal mixing: a real sheet keeps more.
     *
     * <p>Source: conservation of the dissolved amount.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Quantity left(Quantity held, Quantity bath, Quantity baths) {
        double r = Require.aboveZero("held", held, Unit.LITRE);
        double b = Require.aboveZero("bath", bath, Unit.LITRE);
        int times = Require.wholeAtLeast(0, "baths", baths);
        return Quantity.of(100 * StrictMath.pow(r / (r + b), times), Unit.PERCENT);
    }

    /**
     * Works out how much bath there is for each gram of paper.
     *
     * <p>Formula: ratio = V ρ / (m n).
     *
     * <p>Units: volume, density and mass in; g of bath per g of paper out.
     *
     * <p>Range: all above 0; at least one sheet.
     *
     * <p>Source: definition of the liquor ratio.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Quantity liquorRatio(Quantity bath, Quantity density, Quantity sheet, Quantity sheets) {
        double liquid = Require.aboveZero("bath", bath, Unit.MILLILITRE)
                * Require.aboveZero("density", density, Unit.KILOGRAM_PER_CUBIC_METRE) / 1000;
        double paper = Require.aboveZero("sheet", sheet, Unit.GRAM) * Require.wholeAtLeast(1, "sheets", sheets);
        return Quantity.of(liquid / paper, Unit.GRAM_PER_GRAM);
    }

    /**
     * Works out how long a substance takes to diffuse out of a sheet.
     *
     * <p>Formula: t = F l² / D, with F solved from share = 1 − (8/π²) Σ exp(−(2k+1)² π² F / 4) / (2k+1)².
     *
     * <p>Units: thickness as a length, D in m²/s, share in %, l half the thickness where both faces are open; s out.
     *
     * <p>Range: thickness and D above 0; share from 0 to 99.999 %; one face or two.
     *
     * <p>Source: J. Crank (1975), The Mathematics of Diffusion, 2nd edition, section 4.3.2, from memory.
     *
     * @throws OutsideRange if a value lies outside its range
     * @throws NoConvergence if the solver finds no time
     */
    public static Quantity soaking(Quantity thickness, Quantity diffusion, Quantity share, Quantity faces) {
        double depth = Require.aboveZero("thickness", thickness, Unit.METRE) / openFaces(faces);
        double d = Require.aboveZero("diffusion", diffusion, Unit.SQUARE_METRE_PER_SECOND);
        double wanted = Require.within("share", share, 0, 99.999, Unit.PERCENT,
                "the last of a substance takes for ever to leave") / 100;
        return Quantity.of(scale(wanted) * depth * depth / d, Unit.SECOND);
    }

    /**
     * Works out what share has left a sheet after a time on the scale of its own diffusion.
     *
     * <p>Formula: 1 − (8/π²) Σ exp(−(2k+1)² π² F / 4) / (2k+1)², F = D t / l².
     *
     * <p>Units: a plain number in, % out.
     *
     * <p>Range: 0 or more.
     *
     * <p>Source: J. Crank (1975), The Mathematics of Diffusion, 2nd edition, section 4.3.2, from memory.
     *
     * @throws OutsideRange if the number is negative
     */
    public static Quantity leached(Quantity scale) {
        return Quantity.of(100 * leachedAt(Require.atLeastZero("scale", scale, Unit.NONE)), Unit.PERCENT);
    }

    private static double scale(double share) {
        return share == 0 ? 0 : Roots.between("the soaking time", f -> leachedAt(f) - share, 0, 6, 1e-14);
    }

    private static double leachedAt(double f) {
        // At short times the sum needs very many terms, while each face still behaves as if the sheet were endless.
        if (f < 0.02) {
            return 2 * Math.sqrt(f / Math.PI);
        }
        double left = 0;
        for (int odd = 1; odd < 60; odd += 2) {
            left += StrictMath.exp(-odd * odd * Math.PI * Math.PI * f / 4) / (odd * odd);
        }
        return 1 - 8 / (Math.PI * Math.PI) * left;
    }

    private static int openFaces(Quantity faces) {
        int open = Require.wholeAtLeast(1, "faces", faces);
        if (open > 2) {
            throw new OutsideRange("faces", Clause.value(String.valueOf(open)), Clause.of("1 or 2"), "a sheet has two faces");
        }
        return open;
    }
}
