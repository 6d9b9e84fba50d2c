package org.benchleaf.quantity;

/**
 * A rounded number ready to be read.
 *
 * @param number the digits, such as {@code 15–30} or {@code 7.4 ± 0.1}; a time in two units stands here whole
 * @param unit the symbol; empty for counts, pH and times in two units
 */
public record Amount(String number, String unit) {

    /** Stands between a number and its unit: narrow, and never at the end of a line. */
    public static final char UNIT_SPACE = '\u202F';

    /** Number and unit in one, as every other format writes it. */
    public String text() {
        return unit.isEmpty() ? number : number + UNIT_SPACE + unit;
    }
}
