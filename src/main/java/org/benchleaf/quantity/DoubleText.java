package org.benchleaf.quantity;

/**
 * The shortest text of a double and back. In the script of pages another class of this name stands in its place
 * ({@code src/script/DoubleText.java}): there the browser does it, since Java's own code for it would be a tenth of the script.
 */
final class DoubleText {

    private DoubleText() {
    }

    /** Digits with or without an exponent, such as {@code 0.25} or {@code 2.5E-7}. */
    static String of(double number) {
        return Double.toString(number);
    }

    /** The double nearest to a decimal number with or without an exponent. */
    static double read(String digits) {
        return Double.parseDouble(digits);
    }
}
