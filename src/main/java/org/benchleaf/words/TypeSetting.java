package org.benchleaf.words;

import java.util.regex.Pattern;
import org.jsoup.nodes.TextNode;

/**
 * Sets the texts of a page as its language writes them: the decimal mark of its numbers, the sign between numbers of a list where
 * that mark is a comma, the space before high punctuation, and the comma, semicolon and question mark of Arabic.
 *
 * <p>Source: Imprimerie nationale (2002), Lexique des règles typographiques en usage à l'Imprimerie nationale, entries
 * "Ponctuation" and "Nombres" (from memory); the narrow space U+202F stands before a colon too, as in the rest of these pages.
 * Unicode Standard, code chart Arabic: U+060C Arabic comma, U+061B Arabic semicolon, U+061F Arabic question mark.
 */
public final class TypeSetting {

    private static final char NARROW = '\u202f';
    private static final String POINT = ".";
    private static final Pattern POINT_IN_NUMBER = Pattern.compile("(?<=\\d)\\.(?=\\d)");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d)");
    private static final Pattern BETWEEN_NUMBERS = Pattern.compile("(?<=\\d), (?=(?:pH[ \\u00a0\\u202f])?\\d)");
    /** A blank, or nothing behind a word, before a sign that a blank or the end follows. */
    private static final Pattern BEFORE_SIGN = Pattern.compile(
            "[ \\u00a0](?=[:;!?»])|(?<=\\d)[ \\u00a0](?=%)"
                    + "|(?<=[\\p{L}\\p{N})\\]»%])(?=[:;!?](?:\\s|$))|(?<=\\S)(?=»)(?<![ \\u00a0\\u202f])");
    private static final Pattern BEHIND_QUOTE = Pattern.compile("(?<=«)[ \\u00a0]?(?!\\u202f)");

    private static final String LATIN_SIGNS = ",;?";
    private static final String ARABIC_SIGNS = "\u060c\u061b\u061f";
    /** Begins a formula, whose signs stay as they are. */
    private static final char FROM_LEFT_TO_RIGHT = '\u200e';

    private final String mark;
    private final boolean spaced;
    private final boolean arabic;

    private TypeSetting(String mark, boolean spaced, boolean arabic) {
        this.mark = mark;
        this.spaced = spaced;
        this.arabic = arabic;
    }

    /** Sets texts in the language of these words: its decimal mark, whether a blank stands before its colon, and its comma. */
    public static TypeSetting in(Words words) {
        return new TypeSetting(words.say("number.decimal-mark"), words.say("list.colon").startsWith(" "),
                words.say("list.comma").charAt(0) == ARABIC_SIGNS.charAt(0));
    }

    /** Sets a text of a page. */
    public void set(TextNode text) {
        text.text(set(text.getWholeText()));
    }

    /** A text with the signs of the language and the same digits; one with an address of the web stays as it is. */
    public String set(String text) {
        if (text.contains("://")) {
            return text;
        }
        if (arabic) {
            return text.indexOf(FROM_LEFT_TO_RIGHT) < 0 ? withArabicSigns(text) : text;
        }
        String numbers = mark.equals(POINT) ? text : numbers(text);
        return spaced ? BEHIND_QUOTE.matcher(BEFORE_SIGN.matcher(numbers).replaceAll(String.valueOf(NARROW)))
                .replaceAll(String.valueOf(NARROW)) : numbers;
    }

    /** Signs before a blank or the end become Arabic, unless they stand between words of another script. */
    private static String withArabicSigns(String text) {
        String words = null;
        StringBuilder set = null;
        for (int at = 0; at < text.length(); at++) {
            int sign = LATIN_SIGNS.indexOf(text.charAt(at));
            // Behind the stop of an abbreviation, as in "et al., 2001", whose letters may stand in an element of their own.
            boolean shortened = at > 0 && text.charAt(at - 1) == '.';
            if (sign < 0 || shortened || at + 1 < text.length() && !Character.isWhitespace(text.charAt(at + 1))) {
                continue;
            }
            words = words == null ? QuantityRuns.without(text) : words;
            int before = letter(words, at, -1);
            int after = letter(words, at, 1);
            if (before == 0 && after == 0 || isArabic(before) || isArabic(after)) {
                set = set == null ? new StringBuilder(text) : set;
                set.setCharAt(at, ARABIC_SIGNS.charAt(sign));
            }
        }
        return set == null ? text : set.toString();
    }

    /** The letter that is nearest in a direction; 0 if there is none. */
    private static int letter(String text, int from, int step) {
        for (int at = from + step; at >= 0 && at < text.length(); at += step) {
            if (Character.isLetter(text.charAt(at))) {
                return text.charAt(at);
            }
        }
        return 0;
    }

    private static boolean isArabic(int letter) {
        return Character.UnicodeScript.of(letter) == Character.UnicodeScript.ARABIC;
    }

    private String numbers(String text) {
        String set = POINT_IN_NUMBER.matcher(text).replaceAll(point -> isDecimal(text, point.start()) ? mark : POINT);
        // "4,4, 4,5" could be read as three numbers.
        return DECIMAL_COMMA.matcher(set).find() ? BETWEEN_NUMBERS.matcher(set).replaceAll(NARROW + "; ") : set;
    }

    /** Whether the number at a point was measured or worked out: no code, section such as 3.2.3 or version such as CC BY 4.0. */
    private static boolean isDecimal(String text, int point) {
        int from = point;
        while (from > 0 && Character.isDigit(text.charAt(from - 1))) {
            from--;
        }
        int to = point + 1;
        while (to < text.length() && Character.isDigit(text.charAt(to))) {
            to++;
        }
        boolean goesOn = to < text.length() && Character.isLetter(text.charAt(to)) || to + 1 < text.length() && text.charAt(to) == '.'
                && Character.isDigit(text.charAt(to + 1));
        return !goesOn && !isInCode(text, from);
    }

    private static boolean isInCode(String text, int from) {
        char before = from > 0 ? text.charAt(from - 1) : ' ';
        boolean joined = before == '-' && from > 1 && Character.isLetterOrDigit(text.charAt(from - 2));
        boolean version = Character.isSpaceChar(before) && from > 2 && Character.isUpperCase(text.charAt(from - 2))
                && Character.isUpperCase(text.charAt(from - 3));
        return Character.isLetterOrDigit(before) || before == '.' || joined || version;
    }
}
