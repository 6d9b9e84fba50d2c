package org.benchleaf.compose;

import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.quantity.Unit;

/** Sets the narrow, unbreakable space between a number and its unit, wherever the words come from (SI brochure, 5.4.3). */
public final class UnitSpaces {

    /** Not after a digit inside a word: in "tray B2 h" the letter is no unit. Arabic sets "and" or "by" to the number as one letter. */
    private static final Pattern BEFORE_UNIT = Pattern.compile(
            "(?<=\\d)(?<=(?<![\\p{L}\\p{N}.,&&[^\\p{IsArabic}]])[\\d.,]{1,20}) (?=(?:" + Stream.of(Unit.values())
            .map(Unit::symbol).filter(symbol -> !symbol.isEmpty() && !symbol.equals("pH"))
            .sorted(Comparator.comparingInt(String::length).reversed()).map(Pattern::quote)
            .collect(Collectors.joining("|")) + ")(?![\\p{L}\\p{N}]))");
    /** What is not running text, for all that it holds. */
    private static final List<String> APART = List.of("script", "style", "code", "pre", "textarea");

    private UnitSpaces() {
    }

    /** A text with each unit set to its number. */
    static String in(String text) {
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

    /** A page with each unit set to its number in its running text. */
    public static String inPage(String html) {
        StringBuilder page = new StringBuilder(html.length());
        int from = 0;
        for (int tag = html.indexOf('<'); tag >= 0; tag = html.indexOf('<', from)) {
            int end = endOf(html, tag);
            if (end < 0) {
                break;
            }
            page.append(in(html.substring(from, tag))).append(html, tag, end);
            from = end;
        }
        return page.append(in(html.substring(from))).toString();
    }

    /** Where the tag ends that begins there, or its element if that is set apart; negative if it has no end. */
    private static int endOf(String html, int tag) {
        for (String element : APART) {
            int named = tag + 1 + element.length();
            if (html.startsWith(element, tag + 1) && named < html.length() && !isWordSign(html.charAt(named))) {
                String closing = "</" + element + ">";
                int close = html.indexOf(closing, named);
                if (close >= 0) {
                    return close + closing.length();
                }
            }
        }
        int close = html.indexOf('>', tag);
        return close < 0 ? close : close + 1;
    }

    private static boolean isWordSign(char sign) {
        return Character.isLetterOrDigit(sign) || sign == '_';
    }
}
