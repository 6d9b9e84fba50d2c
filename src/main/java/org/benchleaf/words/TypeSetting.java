package org.benchleaf.words;

import java.util.regex.Pattern;
import org.jsoup.nodes.TextNode;

/**
 * Sets the texts of a page as its language writes them: the decimal mark of its numbers, the sign between numbers of a list where
 * that mark is a comma, and the space before high punctuation.
 *
 * <p>Source: Imprimerie nationale (2002), Lexique des règles typographiques en usage à l'Imprimerie nationale, entries
 * "Ponctuation" and "Nombres" (from memory); the narrow space U+202F stands before a colon too, as in the rest of these pages.
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

    private final String mark;
    private final boolean spaced;

    private TypeSetting(String mark, boolean spaced) {
        this.mark = mark;
        this.spaced = spaced;
    }

    /** Sets texts in the language of these words: its decimal mark, and whether a blank stands before its colon. */
    public static TypeSetting in(Words words) {
        return new TypeSetting(words.say("number.decimal-mark"), words.say("list.colon").startsWith(" "));
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
        String numbers = mark.equals(POINT) ? text : numbers(text);
        return spaced ? BEHIND_QUOTE.matcher(BEFORE_SIGN.matcher(numbers).replaceAll(String.valueOf(NARROW)))
                .replaceAll(String.valueOf(NARROW)) : numbers;
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
