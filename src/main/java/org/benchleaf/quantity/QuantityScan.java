package org.benchleaf.quantity;

import java.util.List;
import java.util.Optional;

/**
 * Finds numbers, units and the signs between them in a text; what they mean is for {@link QuantityReader} to say.
 *
 * <p>Written without regular expressions, which would be a quarter of the script that a page loads to work sums.
 */
final class QuantityScan {

    private static final char PLUS_MINUS = '±';
    private static final char DASH = '–';
    private static final List<String> HOUSEHOLD = List.of("drop", "drops", "teaspoon", "teaspoons", "tsp", "tablespoon",
            "tablespoons", "tbsp", "cup", "cups", "pint", "pints", "pinch", "pinches", "spoon", "spoons", "spoonful",
            "spoonfuls");
    /** Letters of Latin, Greek and their neighbours begin here; signs of units such as ‰ lie beyond the end. */
    private static final char FIRST_LETTER_BEYOND_ASCII = 'À';
    private static final char FIRST_PUNCTUATION = '\u2000';

    private final String text;

    /**
     * A number and what follows it up to the end or to the next sign.
     *
     * @param digits the number as written
     * @param from where the number begins
     * @param unit the unit as written, if there is one
     * @param unitFrom where the unit begins; 0 if there is none
     */
    record Term(String digits, int from, Optional<String> unit, int unitFrom) {
    }

    /**
     * Two terms with a sign between them.
     *
     * @param first before the sign
     * @param second behind it
     */
    record Pair(Term first, Term second) {
    }

    QuantityScan(String text) {
        this.text = text;
    }

    /** The whole text as a number and its unit. */
    Optional<Term> one() {
        return term(0, text.length());
    }

    /** The whole text as two terms with ± between them. */
    Optional<Pair> tolerance() {
        return pair(true);
    }

    /** The whole text as two terms with a dash or the word "to" between them. */
    Optional<Pair> range() {
        return pair(false);
    }

    /** The first number in the text, whatever stands around it. */
    Optional<String> firstNumber() {
        for (int from = 0; from < text.length(); from++) {
            int end = numberEnd(from, text.length());
            if (end > from) {
                return Optional.of(text.substring(from, end));
            }
        }
        return Optional.empty();
    }

    /** Behind "pH" and the blanks after it, if the text begins so and says more in one line; else 0. */
    int behindPh() {
        int behind = blanks(2);
        return text.startsWith("pH") && behind > 2 && behind < text.length() && isOneLine(behind, text.length())
                ? behind : 0;
    }

    /** The text without the second "pH" of a range, as in "8 to pH 9". */
    String withoutSecondPh() {
        for (int at = 0; at < text.length(); at++) {
            int from = isSign(at, false) ? blanks(behindSign(at)) : text.length();
            if (text.startsWith("pH", from) && blanks(from + 2) > from + 2) {
                return text.substring(0, from) + text.substring(blanks(from + 2));
            }
        }
        return text;
    }

    /** Whether a comma stands between two digits. */
    boolean hasCommaInNumber() {
        for (int at = 1; at + 1 < text.length(); at++) {
            if (text.charAt(at) == ',' && isDigit(at - 1) && isDigit(at + 1)) {
                return true;
            }
        }
        return false;
    }

    /** Whether it begins with a number, a colon and a digit, all in one line. */
    boolean isColonRatio() {
        int whole = digits(0, text.length());
        int end = isAt(whole, '.') && isDigit(whole + 1) ? digits(whole + 1, text.length()) : whole;
        int colon = blanks(end);
        int second = blanks(colon + 1);
        return whole > 0 && isAt(colon, ':') && isDigit(second) && isOneLine(second, text.length());
    }

    /** Whether one of its words is a drop, a spoon, a pinch or the like. */
    boolean hasHouseholdMeasure() {
        int from = 0;
        while (from < text.length()) {
            int to = from;
            while (isWordSign(to)) {
                to++;
            }
            if (to > from && HOUSEHOLD.contains(lower(text.substring(from, to)))) {
                return true;
            }
            from = to + 1;
        }
        return false;
    }

    /** The text with every run of blanks made one space. */
    String withSingleSpaces() {
        StringBuilder single = new StringBuilder(text.length());
        for (int at = 0; at < text.length(); at++) {
            if (!isBlank(at)) {
                single.append(text.charAt(at));
            } else if (!isBlank(at - 1)) {
                single.append(' ');
            }
        }
        return single.toString();
    }

    /** The earliest sign at which the text can be cut in two terms. */
    private Optional<Pair> pair(boolean plusMinus) {
        for (int end = numberEnd(0, text.length()); end > 0; end = numberEnd(0, end - 1)) {
            for (int sign = end; sign < text.length(); sign++) {
                Optional<Term> first = isSign(sign, plusMinus) ? termOf(0, end, blanksBefore(sign)) : Optional.empty();
                Optional<Term> second = first.isPresent() ? term(blanks(behindSign(sign)), text.length()) : Optional.empty();
                if (second.isPresent()) {
                    return Optional.of(new Pair(first.get(), second.get()));
                }
            }
        }
        return Optional.empty();
    }

    /** A number with its unit from one place to another; the longest number that leaves a unit or nothing. */
    private Optional<Term> term(int from, int to) {
        for (int end = numberEnd(from, to); end > from; end = numberEnd(from, end - 1)) {
            Optional<Term> found = termOf(from, end, to);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private Optional<Term> termOf(int from, int end, int to) {
        int unit = blanks(end);
        String digits = text.substring(from, end);
        if (unit >= to) {
            return Optional.of(new Term(digits, from, Optional.empty(), 0));
        }
        return isUnit(unit, to) ? Optional.of(new Term(digits, from, Optional.of(text.substring(unit, to)), unit))
                : Optional.empty();
    }

    /** Where the longest number ends that begins there and goes no further than that; not behind the start if none does. */
    private int numberEnd(int from, int most) {
        int start = from < most && (isAt(from, '+') || isAt(from, '-')) ? from + 1 : from;
        int whole = digits(start, most);
        if (whole <= start) {
            return -1;
        }
        int fraction = isAt(whole, '.') ? digits(whole + 1, most) : whole;
        int end = fraction > whole + 1 ? fraction : whole;
        int power = isAt(end, 'e') || isAt(end, 'E') ? end + 1 : most;
        int exponent = isAt(power, '+') || isAt(power, '-') ? power + 1 : power;
        return Math.max(end, exponent < most && digits(exponent, most) > exponent ? digits(exponent, most) : end);
    }

    /** A unit does not begin with a digit, but for the rates, whose symbols do: "2 1/h". */
    private boolean isUnit(int from, int to) {
        boolean rate = isAt(from, '1') && from + 1 < to && isAt(from + 1, '/');
        boolean sign = isDigit(from) || isBlank(from) || isAt(from, PLUS_MINUS) || isAt(from, DASH);
        return from < to && !isBlank(to - 1) && (rate || !sign) && isOneLine(from + 1, to);
    }

    private boolean isSign(int at, boolean plusMinus) {
        return plusMinus ? isAt(at, PLUS_MINUS) : isAt(at, DASH)
                || text.startsWith("to", at) && !isWordSign(at - 1) && !isWordSign(at + 2);
    }

    private int behindSign(int at) {
        return isAt(at, 't') ? at + 2 : at + 1;
    }

    private int digits(int from, int most) {
        int at = from;
        while (at < most && isDigit(at)) {
            at++;
        }
        return at;
    }

    private int blanks(int from) {
        int at = from;
        while (isBlank(at)) {
            at++;
        }
        return at;
    }

    private int blanksBefore(int to) {
        int at = to;
        while (isBlank(at - 1)) {
            at--;
        }
        return at;
    }

    private boolean isOneLine(int from, int to) {
        for (int at = from; at < to; at++) {
            char sign = text.charAt(at);
            if (sign == '\n' || sign == '\r' || sign == '\u0085' || sign == '\u2028' || sign == '\u2029') {
                return false;
            }
        }
        return true;
    }

    private boolean isAt(int at, char sign) {
        return at >= 0 && at < text.length() && text.charAt(at) == sign;
    }

    private boolean isDigit(int at) {
        return at >= 0 && at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9';
    }

    private boolean isBlank(int at) {
        return at >= 0 && at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) >= '\t' && text.charAt(at) <= '\r');
    }

    private boolean isWordSign(int at) {
        if (at < 0 || at >= text.length()) {
            return false;
        }
        char sign = text.charAt(at);
        return sign >= 'a' && sign <= 'z' || sign >= 'A' && sign <= 'Z' || isDigit(at) || sign == '_' || sign == 'µ'
                || sign >= FIRST_LETTER_BEYOND_ASCII && sign < FIRST_PUNCTUATION && sign != '×' && sign != '÷';
    }

    /** In small letters, as far as ASCII goes: the words that are looked for have no others. */
    private static String lower(String word) {
        StringBuilder small = new StringBuilder(word.length());
        for (int at = 0; at < word.length(); at++) {
            char sign = word.charAt(at);
            small.append(sign >= 'A' && sign <= 'Z' ? (char) (sign - 'A' + 'a') : sign);
        }
        return small.toString();
    }
}
