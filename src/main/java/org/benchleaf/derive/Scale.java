package org.benchleaf.derive;

/**
 * For how many sheets amounts are worked out.
 *
 * @param stations how many work at once, each with trays of its own
 * @param sheetsEach sheets at each station
 * @param spare share made over and above, 0.15 for 15 %
 */
record Scale(int stations, int sheetsEach, double spare) {

    static final Scale ONE = new Scale(1, 1, 0);

    Scale {
        if (stations < 1 || sheetsEach < 1 || spare < 0) {
            throw new IllegalArgumentException("stations " + stations + ", sheets " + sheetsEach + ", spare " + spare);
        }
    }

    static Scale sheets(int sheets) {
        return new Scale(1, sheets, 0);
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
        return 1 + spare;
    }

    boolean isOne() {
        return sheetCount() == 1 && spare == 0;
    }
}
