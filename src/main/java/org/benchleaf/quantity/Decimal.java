package org.benchleaf.quantity;

/**
 * A decimal number digit by digit, alike in the program and in a page. Of a double it is the shortest that stands for it, so
 * that 2.675 rounds as on paper.
 *
 * <p>In place of {@link java.math.BigDecimal}, which makes the script of pages a tenth larger and rounds to significant digits
 * wrongly where it is compiled to JavaScript.
 */
public final class Decimal {

    private final boolean negative;
    /** Without noughts in front; a single one for zero. */
    private final String digits;
    private final int scale;

    private Decimal(boolean negative, String digits, int scale) {
        int first = 0;
        while (first < digits.length() - 1 && digits.charAt(first) == '0') {
            first++;
        }
        this.digits = digits.substring(first);
        this.negative = negative && !isZero();
        this.scale = scale;
    }

    /** The shortest decimal that stands for a finite double, without noughts at its end. */
    public static Decimal of(double number) {
        return read(DoubleText.of(number)).stripped();
    }

    /** The decimal of a text such as {@code -2.50} or {@code 1e-7}, with every decimal written. */
    public static Decimal read(String text) {
        int exponentSign = Math.max(text.indexOf('e'), text.indexOf('E'));
        String written = exponentSign < 0 ? text : text.substring(0, exponentSign);
        String exponent = exponentSign < 0 ? "0" : text.substring(exponentSign + 1);
        boolean signed = written.charAt(0) == '-' || written.charAt(0) == '+';
        String number = signed ? written.substring(1) : written;
        int point = number.indexOf('.');
        int decimals = point < 0 ? 0 : number.length() - point - 1;
        return new Decimal(written.charAt(0) == '-', point < 0 ? number : number.substring(0, point) + number.substring(point + 1),
                decimals - Integer.parseInt(exponent));
    }

    /** The text of any double, {@code NaN} and infinities too, with a point or an exponent as Java writes it. */
    public static String text(double number) {
        return Math.abs(number) <= Double.MAX_VALUE ? of(number).toString() : DoubleText.of(number);
    }

    /** The double nearest to the decimal of a text. */
    public static double number(String text) {
        return DoubleText.read(text);
    }

    /** With so many decimals, a half rounded away from zero; a negative count rounds to tens, hundreds and so on. */
    public Decimal rounded(int decimals) {
        int surplus = scale - decimals;
        if (surplus <= 0) {
            return new Decimal(negative, digits + "0".repeat(-surplus), decimals);
        }
        int kept = digits.length() - surplus;
        boolean up = kept >= 0 && digits.charAt(kept) >= '5';
        String head = "0" + digits.substring(0, Math.max(0, kept));
        return new Decimal(negative, up ? next(head) : head, decimals);
    }

    /** With at most so many significant digits, a half rounded away from zero. */
    public Decimal significant(int most) {
        int surplus = digits.length() - most;
        return surplus <= 0 ? this : rounded(scale - surplus);
    }

    /** Without noughts at its end, those before the decimal mark included. */
    public Decimal stripped() {
        int end = digits.length();
        while (end > 1 && digits.charAt(end - 1) == '0') {
            end--;
        }
        return isZero() ? new Decimal(false, "0", 0) : new Decimal(negative, digits.substring(0, end), scale - digits.length() + end);
    }

    /** The same digits, their decimal mark so many places further right. */
    public Decimal shifted(int places) {
        return new Decimal(negative, digits, scale - places);
    }

    /** The power of ten of its first digit; 0 for zero. */
    public int magnitude() {
        return digits.length() - scale - 1;
    }

    /** With how many decimals it is written; negative where noughts before the decimal mark are left out. */
    public int scale() {
        return scale;
    }

    /** Whether it is nothing. */
    public boolean isZero() {
        return digits.equals("0");
    }

    /** Whether it lies below zero. */
    public boolean isNegative() {
        return negative;
    }

    /** The double nearest to it. */
    public double value() {
        return DoubleText.read((negative ? "-" : "") + digits + "e" + -scale);
    }

    /** A power of ten as a double: that of the last digit of a number with so many decimals. */
    public static double step(int decimals) {
        return DoubleText.read("1e" + -decimals);
    }

    /** All digits without an exponent, a minus as in ASCII. */
    public String plain() {
        return (negative ? "-" : "") + size();
    }

    /** All digits without sign and exponent. */
    public String size() {
        if (scale <= 0) {
            return isZero() ? digits : digits + "0".repeat(-scale);
        }
        String padded = "0".repeat(Math.max(0, scale + 1 - digits.length())) + digits;
        return padded.substring(0, padded.length() - scale) + "." + padded.substring(padded.length() - scale);
    }

    /** As Java writes a double: a point always, an exponent below 0.001 and from ten million on. */
    @Override
    public String toString() {
        Decimal shortest = stripped();
        if (isZero() || magnitude() >= -3 && magnitude() < 7) {
            return shortest.rounded(Math.max(1, shortest.scale)).plain();
        }
        Decimal first = shortest.shifted(-magnitude());
        return first.rounded(Math.max(1, first.scale)).plain() + "E" + magnitude();
    }

    private static String next(String whole) {
        int last = whole.length() - 1;
        while (whole.charAt(last) == '9') {
            last--;
        }
        return whole.substring(0, last) + (char) (whole.charAt(last) + 1) + "0".repeat(whole.length() - 1 - last);
    }
}
