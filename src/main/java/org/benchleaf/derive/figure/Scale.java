package org.benchleaf.derive.figure;

import java.util.Optional;
import org.benchleaf.model.ClassStores;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.science.Batches;

/**
 * For how many sheets amounts are worked out.
 *
 * @param stations how many work at once, each with trays of its own
 * @param sheetsEach sheets at each station
 * @param spare what is made over and above for a class; empty for a case
 */
public record Scale(int stations, int sheetsEach, Optional<ClassStores.Spare> spare) {

    static final Scale ONE = sheets(1);

    public Scale {
        if (stations < 1 || sheetsEach < 1) {
            throw new IllegalArgumentException("stations " + stations + ", sheets " + sheetsEach);
        }
    }

    public static Scale sheets(int sheets) {
        return new Scale(1, sheets, Optional.empty());
    }

    /** How many sheets are worked on. */
    public int sheetCount() {
        return stations * sheetsEach;
    }

    /** How many trays are filled for one bath, where so many sheets share a tray. */
    public int trays(int sheetsInTray) {
        return stations * ((sheetsEach + sheetsInTray - 1) / Math.max(1, sheetsInTray));
    }

    /** For how many sheets a liquid is drawn from a bottle: with the share to spare, and at least for every spare sheet. */
    double sheetsOfLiquid() {
        return spare.map(kinds -> served(Batches.withSpare(kinds.liquids()).value())).orElse((double) sheetCount());
    }

    /** For how many sheets something is cut: with the share to spare, and at least for every spare sheet. */
    double sheetsOfPieces() {
        return spare.map(kinds -> served(Batches.withSpare(kinds.pieces()).value())).orElse((double) sheetCount());
    }

    private double served(double withShare) {
        return Math.max(sheetCount() * withShare, sheetCount() + spareSheets());
    }

    /** Sheets over and above those that are worked on. */
    public int spareSheets() {
        return spare.map(ClassStores.Spare::sheets).orElse(0);
    }

    /**
     * How often trays are filled for so many baths, each made by its own in a class: some more, and at least all baths of the
     * spare sheets.
     */
    public int fillings(int baths, int trays) {
        return spare.map(kinds -> baths * trays + Math.max(kinds.baths(), baths * kinds.sheets())).orElse(baths);
    }

    /** What the liquid of all trays is multiplied with: a tray filled to a mark needs no share more, but may be filled again. */
    double trayfuls(int baths, int trays) {
        return spare.map(kinds -> (double) fillings(baths, trays) / (baths * trays)).orElse(1.0);
    }

    /**
     * How many pieces there are at least over and above: those of every spare sheet, and one where a share is spared.
     *
     * @param share that is spared
     * @param each how many one sheet takes
     */
    public int extra(Quantity share, int each) {
        return Math.max(each * spareSheets(), share.high() > 0 ? 1 : 0);
    }

    boolean isOne() {
        return sheetCount() == 1 && spare.isEmpty();
    }
}
