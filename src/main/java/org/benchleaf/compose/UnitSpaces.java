package org.benchleaf.compose;

import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.quantity.Unit;

/** Sets the narrow, unbreakable space between a number and its unit, wherever the words come from (SI brochure, 5.4.3). */
public final class UnitSpaces {

    private static final Pattern BEFORE_UNIT = Pattern.compile("(?<=\\d) (?=(?:" + Stream.of(Unit.values())
            .map(Unit::symbol).filter(symbol -> !symbol.isEmpty() && !symbol.equals("pH"))
            .sorted(Comparator.comparingInt(String::length).reversed()).map(Pattern::quote)
            .collect(Collectors.joining("|")) + ")(?![\\p{L}\\p{N}]))");
    /** What is not running text: tags, and all of a script, of code and of verbatim text. */
    private static final Pattern APART = Pattern.compile(
            "<(script|style|code|pre|textarea)\\b.*?</\\1>|<[^>]*>", Pattern.DOTALL);

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
        Matcher apart = APART.matcher(html);
        int from = 0;
        while (apart.find()) {
            page.append(in(html.substring(from, apart.start()))).append(apart.group());
            from = apart.end();
        }
        return page.append(in(html.substring(from))).toString();
    }
}
