package org.benchleaf.words;

import java.util.Comparator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.quantity.Amount;
import org.benchleaf.quantity.Unit;

/** Sets the narrow, unbreakable space between a number and its unit, wherever the words come from (SI brochure, 5.4.3). */
public final class UnitSpaces {

    /** Not after a digit inside a word: in "tray B2 h" the letter is no unit. Arabic sets "and" or "by" to the number as one letter. */
    private static final Pattern BEFORE_UNIT = Pattern.compile(
            "(?<=\\d)(?<=(?<![\\p{L}\\p{N}.,&&[^\\p{IsArabic}]])[\\d.,]{1,20}) (?=(?:" + Stream.of(Unit.values())
            .map(Unit::symbol).filter(symbol -> !symbol.isEmpty() && !symbol.equals("pH"))
            .sorted(Comparator.comparingInt(String::length).reversed()).map(Pattern::quote)
            .collect(Collectors.joining("|")) + ")(?![\\p{L}\\p{N}]))");

    private UnitSpaces() {
    }

    /** A text with each unit set to its number. */
    public static String in(String text) {
        return !hasSpacedNumber(text) ? text : BEFORE_UNIT.matcher(text).replaceAll(String.valueOf(Amount.UNIT_SPACE));
    }

    private static boolean hasSpacedNumber(String text) {
        for (int space = text.indexOf(' ', 1); space >= 0; space = text.indexOf(' ', space + 1)) {
            if (text.charAt(space - 1) >= '0' && text.charAt(space - 1) <= '9') {
                return true;
            }
        }
        return false;
    }
}
