package org.benchleaf.derive;

import java.util.Optional;
import org.benchleaf.model.ClassStores;
import org.benchleaf.science.Batches;

/**
 * For how many sheets amounts are worked out.
 *
 * @param stations how many work at once, each with trays of its own
 * @param sheetsEach sheets at each station
 * @param spare what is made over and above for a class; empty for a case
 */
record Scale(int stations, int sheetsEach, Optional<ClassStores.Spare> spare) {

    static final Scale ONE = sheets(1);

    Scale {
        if (stations < 1 || sheetsEach < 1) {
            throw new IllegalArgumentException("stations " + stations + ", sheets " + sheetsEach);
        }
    }

    static Scale sheets(int sheets) {
        return new Scale(1, sheets, Optional.empty());
    }

    /** How many sheets are worked on. */
    int sheetCount() {
        return stations * sheetsEach;
    }

    /** How many trays are filled for one bath, where so many sheets share a tray. */
    int trays(int sheetsInTray) {
        return stations * ((sheetsEach + sheetsInTray - 1) / Math.max(1, sheetsInTray));
    }

    /** What is drawn from a bottle is multiplied with this, so that there is some to spare. */
    double liquids() {
        return spare.map(kinds -> Batches.withSpare(kinds.liquids()).value()).orElse(1.0);
    }

    /** What is cut is multiplied with this, so that there is some to spare. */
    double cuttings() {
        return spare.map(kinds -> Batches.withSpare(kinds.pieces()).value()).orElse(1.0);
    }

    /** How often trays are filled for so many baths, each made by its own in a class. */
    int fillings(int baths, int trays) {
        return spare.map(kinds -> baths * trays + kinds.baths()).orElse(baths);
    }

    /** What the liquid of all trays is multiplied with: a tray filled to a mark needs no share more, but may be filled again. */
    double trayfuls(int baths, int trays) {
        return spare.map(kinds -> (double) fillings(baths, trays) / (baths * trays)).orElse(1.0);
    }

    boolean isOne() {
        return sheetCount() == 1 && spare.isEmpty();
    }
}
