package org.benchleaf.quantity;

import java.util.function.UnaryOperator;

/**
 * How a {@link Clause} is said in a language.
 *
 * @param words the words for a text in English, with the same holes; the text itself where there are none
 * @param decimalMark what stands before the decimals of a number
 * @param fromRight whether the language runs from right to left, so that values must be set apart in it
 */
public record TextLanguage(UnaryOperator<String> words, char decimalMark, boolean fromRight) {

    /** The program's texts as they are. */
    public static final TextLanguage ENGLISH = new TextLanguage(text -> text, '.', false);

    /** Begin and end of a piece that runs from left to right (Unicode Standard Annex 9, 2.4). */
    private static final char APART = '\u2066';
    private static final char TOGETHER = '\u2069';
    private static final char ARABIC_NOUGHT = '\u0660';
    private static final char ARABIC_POINT = '\u066B';
    private static final char ARABIC_COMMA = '\u060C';
    private static final char ARABIC_SEMICOLON = '\u061B';

    /** A number with its unit, or a text that somebody put in, as it stands in a sentence of the language. */
    String value(String text) {
        String set = decimalMark == '.' ? text : withMark(text);
        return fromRight ? APART + set + TOGETHER : set;
    }

    /** A text that was typed in the language, with digits, point and comma as the program reads them. */
    public String typed(String text) {
        StringBuilder typed = new StringBuilder(decimalMark == '.' ? text : betweenDigits(text, decimalMark, '.'));
        for (int at = 0; at < typed.length(); at++) {
            typed.setCharAt(at, sign(typed.charAt(at)));
        }
        return typed.toString();
    }

    /** Digits and signs of Arabic keyboards (Unicode, block Arabic); where the comma is decimal, values are parted by semicolons. */
    private char sign(char typed) {
        return switch (typed) {
            case ARABIC_POINT -> '.';
            case ARABIC_COMMA, ARABIC_SEMICOLON -> ',';
            case ';' -> decimalMark == ',' ? ',' : typed;
            default -> typed >= ARABIC_NOUGHT && typed <= ARABIC_NOUGHT + 9 ? (char) ('0' + typed - ARABIC_NOUGHT) : typed;
        };
    }

    /** A text of the program with the decimal mark of the language in its numbers. */
    public String withMark(String text) {
        return betweenDigits(text, '.', decimalMark);
    }

    private static String betweenDigits(String text, char from, char to) {
        StringBuilder changed = new StringBuilder(text);
        for (int at = 1; at + 1 < text.length(); at++) {
            if (text.charAt(at) == from && isDigit(text.charAt(at - 1)) && isDigit(text.charAt(at + 1))) {
                changed.setCharAt(at, to);
            }
        }
        return changed.toString();
    }

    private static boolean isDigit(char sign) {
        return sign >= '0' && sign <= '9';
    }
}
