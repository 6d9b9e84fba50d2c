package org.benchleaf.derive;

import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.science.Batches;

/**
 * For how many sheets amounts are worked out.
 *
 * @param stations how many work at once, each with trays of its own
 * @param sheetsEach sheets at each station
 * @param spare share made over and above
 */
record Scale(int stations, int sheetsEach, Quantity spare) {

    private static final Quantity NOTHING = Quantity.of(0, Unit.PERCENT);
    static final Scale ONE = new Scale(1, 1, NOTHING);

    Scale {
        if (stations < 1 || sheetsEach < 1 || spare.low() < 0) {
            throw new IllegalArgumentException("stations " + stations + ", sheets " + sheetsEach + ", spare " + spare);
        }
    }

    static Scale sheets(int sheets) {
        return new Scale(1, sheets, NOTHING);
    }

    /** How many sheets are worked on. */
    int sheetCount() {
        return stations * sheetsEach;
    }

    /** How many trays are filled for one bath, where so many sheets share a tray. */
    int trays(int sheetsInTray) {
        return stations * ((sheetsEach + sheetsInTray - 1) / Math.max(1, sheetsInTray));
    }

    /** What an amount is multiplied with so that there is some to spare. */
    double withSpare() {
        return Batches.withSpare(spare).value();
    }

    boolean isOne() {
        return sheetCount() == 1 && spare.high() == 0;
    }
}
