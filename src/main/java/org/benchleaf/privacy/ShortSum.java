package org.benchleaf.privacy;

import java.util.regex.Pattern;

/**
 * Decides whether a number with a word for thousands or millions, as in "£1.2m", is the private sum.
 *
 * @param mantissa the number before the word, with a point before its decimals
 */
record ShortSum(String mantissa) implements Needle.Evidence {

    private static final Pattern NOT_OF_A_NUMBER = Pattern.compile("[^\\d.,]");

    @Override
    public boolean counts(Spot spot) {
        boolean ends = spot.suffix().isEmpty() || NameScripts.isEastAsian(spot.suffix());
        return ends && spot.prefix().isEmpty() && number(spot.written()).equals(mantissa)
                && NumberEvidence.isNearMoney(spot, NumberEvidence.NUMBER_REACH);
    }

    private static String number(String written) {
        String number = NOT_OF_A_NUMBER.matcher(written).replaceAll("").replace(',', '.');
        return number.endsWith(".") ? number.substring(0, number.length() - 1) : number;
    }
}
