package org.benchleaf.calculate;

import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.benchleaf.quantity.Amount;
import org.benchleaf.quantity.Decimal;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * Turns numbers into text, the one place where anything is rounded; the same in the program and in a page.
 *
 * <p>A worked-out number keeps as many digits as its uncertainty allows (JCGM 100:2008, 7.2.6: the uncertainty to at
 * most two digits, the value to the same place), three significant digits where no uncertainty is known. A number an
 * author wrote keeps the digits written. Then a narrow no-break space and the symbol; groups of three only from
 * 10,000 on (ISO 80000-1).
 */
public class Digits {

    /** How an amount is rounded that a hand fills to a mark: to two digits. */
    public static final String TO_A_MARK = "mark";

    private static final char MINUS = '\u2212';
    private static final char GROUP = '\u202F';
    private static final String EN_DASH = "–";
    private static final int DIGITS_WITHOUT_UNCERTAINTY = 3;
    /** No balance, meter or ruler of the bench reads finer (common practice, no source); a double of a page may end otherwise. */
    private static final int MOST_DIGITS = 7;
    /** The power of ten below which a number is told with one. */
    private static final int LEAST_WITHOUT_POWER = -4;
    private static final double MILLILITRES_IN_A_LITRE = 1000;
    private static final double LEAST_IN_MOLES = 0.001;
    private static final double MINUTE = 60;
    private static final double HOUR = 3600;
    /** What is longer is told in hours, as a person would. */
    private static final double LONGEST_IN_MINUTES = 90;
    private static final double DAY = 86400;
    private static final long DAYS_OF_A_WEEK = 7;
    /** Whole weeks are told as such from two on; a week is seven days to most. */
    private static final long FEWEST_WEEKS = 2;

    private final char decimalMark;
    private final CountedUnit weeks;

    /**
     * The digits of a language.
     *
     * @param decimalMark what stands before the decimals
     * @param weeks the unit of whole weeks
     */
    public Digits(char decimalMark, CountedUnit weeks) {
        this.decimalMark = decimalMark;
        this.weeks = weeks;
    }

    /** A worked-out quantity, in the unit that suits its size, rounded to what its uncertainty allows. */
    public Amount amount(Quantity quantity) {
        if (quantity.dimension() == Dimension.TIME) {
            return duration(quantity);
        }
        Quantity scaled = scale(quantity);
        return new Amount(digits(scaled), symbol(scaled.unit()));
    }

    /** A worked-out quantity with no more decimals than what it was read with; its spread decides where it has one. */
    public Amount amount(Quantity quantity, OptionalInt most) {
        if (most.isEmpty()) {
            return amount(quantity);
        }
        return isOneNumber(quantity) ? new Amount(plain(rounded(quantity.value(), most.getAsInt())), symbol(quantity.unit()))
                : quantity.spread() == Quantity.Spread.TOLERANCE
                        ? new Amount(tolerance(quantity, most.getAsInt()), symbol(quantity.unit())) : amount(quantity);
    }

    /** A value and its tolerance with at most so many decimals, the tolerance never less than one of the last of them. */
    private String tolerance(Quantity quantity, int most) {
        int decimals = Math.min(most, place(quantity));
        Decimal half = rounded(quantity.halfWidth(), decimals);
        return plain(rounded(quantity.value(), decimals)) + " ± " + plain(half.isZero() ? Decimal.of(1).shifted(-decimals) : half);
    }

    /**
     * A worked-out quantity as a sheet tells it.
     *
     * @param rounding the most decimals; {@link #TO_A_MARK} for an amount that is filled to a mark; empty where its spread decides
     */
    public Amount told(Quantity quantity, String rounding) {
        if (rounding.equals(TO_A_MARK)) {
            return isOneNumber(quantity) ? roughly(quantity, 2) : amount(quantity);
        }
        return amount(quantity, rounding.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(rounding)));
    }

    /** A quantity to so many digits, in the unit that suits its size, for a hand that reads no finer. */
    public Amount roughly(Quantity quantity, int kept) {
        Quantity scaled = scale(quantity.exact());
        return new Amount(plain(digits(scaled.value(), kept)), symbol(scaled.unit()));
    }

    /** An amount as it was chosen for a vessel or balance: every digit, litres from one litre on. */
    public Amount poured(Quantity quantity) {
        return written(quantity.unit() == Unit.MILLILITRE && quantity.value() >= MILLILITRES_IN_A_LITRE
                ? quantity.to(Unit.LITRE) : quantity);
    }

    /** A multiple with its ends, all to two digits, as from readings of a pH. */
    public Amount multiple(Quantity ratio) {
        String low = plain(digits(ratio.low(), 2));
        String high = plain(digits(ratio.high(), 2));
        return new Amount(plain(digits(ratio.value(), 2)) + (low.equals(high) ? "" : " (" + low + EN_DASH + high + ")"), "");
    }

    private static Decimal digits(double number, int kept) {
        return Decimal.of(number).significant(kept).stripped();
    }

    /** The two ends of a quantity with a fixed count of decimals. */
    public Amount between(Quantity quantity, int decimals) {
        String low = fixed(quantity.low(), decimals);
        String high = fixed(quantity.high(), decimals);
        return new Amount(low.equals(high) ? low : low + rangeDash(low, high) + high, symbol(quantity.unit()));
    }

    /** A quantity as its author wrote it: own unit, every digit. */
    public Amount written(Quantity quantity) {
        String number = switch (quantity.spread()) {
            case NONE, RESOLUTION -> plain(Decimal.of(quantity.value()));
            case RANGE -> plain(Decimal.of(quantity.low())) + EN_DASH + plain(Decimal.of(quantity.high()));
            case TOLERANCE -> plain(Decimal.of(quantity.value())) + " ± " + plain(Decimal.of(quantity.halfWidth()));
        };
        return new Amount(number, symbol(quantity.unit()));
    }

    /** An uncertainty by itself: two digits if it begins with 1 or 2, else one. */
    public Amount uncertainty(Quantity halfWidth) {
        return new Amount(plain(counting(halfWidth.value())), symbol(halfWidth.unit()));
    }

    /**
     * How far a worked-out quantity may lie off, in the unit in which {@link #amount} tells the quantity itself.
     *
     * @param most the most decimals that the quantity is told with; the half width is never less than one of the last of them
     */
    public Amount halfWidth(Quantity quantity, OptionalInt most) {
        if (quantity.dimension() == Dimension.TIME) {
            return duration(Quantity.of(quantity.halfWidth(), quantity.unit()));
        }
        Quantity scaled = scale(quantity);
        Decimal half = counting(scaled.halfWidth());
        Decimal least = Decimal.of(1).shifted(-most.orElse(Math.max(0, half.scale())));
        Decimal told = half.rounded(Math.max(0, least.scale()));
        return new Amount(plain(told.isZero() ? least : told), symbol(scaled.unit()));
    }

    /** A quantity with the uncertainty of what measured it. */
    Amount within(Quantity quantity, Quantity halfWidth) {
        return amount(Quantity.plusMinus(quantity.value(), halfWidth.in(quantity.unit()), quantity.unit()));
    }

    /** A bare number with a fixed count of decimals, for a column that lines up. */
    public String fixed(double number, int decimals) {
        return plain(rounded(number, decimals));
    }

    /** A worked-out quantity before it is rounded for the page, in the unit in which {@link #amount} tells it: six digits. */
    public Amount unrounded(Quantity quantity) {
        Quantity scaled = scale(quantity);
        return new Amount(plain(sixDigits(scaled.value())), symbol(scaled.unit()));
    }

    public static Decimal sixDigits(double number) {
        return digits(number, 6);
    }

    /** With how many decimals a number was written, as far as a double tells. */
    public static int decimalsOf(double number) {
        return Math.max(0, Decimal.of(number).scale());
    }

    /** A bare number to three significant digits. */
    public String rough(double number) {
        return plain(significant(number));
    }

    /** A bare number as written. */
    public String number(double number) {
        return plain(Decimal.of(number));
    }

    /** A time in the units a person would say: {@code 45 s}, {@code 15–30 min}, {@code 1 h 30 min}, {@code 3 d}. */
    public Amount duration(Quantity time) {
        double low = time.lowIn(Unit.SECOND);
        double high = time.highIn(Unit.SECOND);
        if (isOneNumber(time)) {
            return span(time.in(Unit.SECOND), LONGEST_IN_MINUTES);
        }
        // Both ends of a range are told in one way: not "90 min" to "2 h 45 min".
        double inMinutes = high < (LONGEST_IN_MINUTES + 1) * MINUTE ? LONGEST_IN_MINUTES : HOUR / MINUTE;
        Amount from = span(low, inMinutes);
        Amount to = span(high, inMinutes);
        if (from.text().equals(to.text())) {
            return from;
        }
        if (from.unit().equals(to.unit()) && !from.unit().isEmpty()) {
            return new Amount(from.number() + EN_DASH + to.number(), to.unit());
        }
        if (high <= LONGEST_IN_MINUTES * MINUTE && low % MINUTE == 0 && high % MINUTE == 0) {
            return new Amount(plain(Decimal.of(low / MINUTE)) + EN_DASH + plain(Decimal.of(high / MINUTE)), "min");
        }
        return new Amount(from.text() + " " + EN_DASH + " " + to.text(), "");
    }

    private Amount span(double seconds, double mostInMinutes) {
        double size = Math.abs(seconds);
        if (size < 120 && size % MINUTE != 0) {
            return new Amount(plain(significant(seconds)), "s");
        }
        long minutes = Math.round(size / MINUTE);
        if (minutes <= mostInMinutes && minutes != 60) {
            return new Amount(plain(Decimal.of(minutes)), "min");
        }
        if (size < 2 * DAY) {
            return twoUnits(minutes / 60, "h", minutes % 60, "min");
        }
        long hours = Math.round(size / HOUR);
        long days = hours / 24;
        if (hours % 24 == 0 && days % DAYS_OF_A_WEEK == 0 && days >= FEWEST_WEEKS * DAYS_OF_A_WEEK) {
            long number = days / DAYS_OF_A_WEEK;
            return weeks.of(number, plain(Decimal.of(number)));
        }
        return twoUnits(hours / 24, "d", hours % 24, "h");
    }

    private Amount twoUnits(long large, String largeUnit, long small, String smallUnit) {
        Amount first = new Amount(plain(Decimal.of(large)), largeUnit);
        return small == 0 ? first
                : new Amount(first.text() + " " + small + Amount.UNIT_SPACE + smallUnit, "");
    }

    private String digits(Quantity quantity) {
        if (quantity.spread() == Quantity.Spread.NONE) {
            return plain(quantity.dimension() == Dimension.COUNT
                    ? rounded(quantity.value(), 0)
                    : significant(quantity.value()));
        }
        int place = place(quantity);
        if (quantity.spread() == Quantity.Spread.RESOLUTION) {
            Decimal kept = significant(quantity.value()).rounded(place).stripped();
            return plain(kept.isZero() ? digits(quantity.value(), 1) : kept);
        }
        if (quantity.spread() == Quantity.Spread.TOLERANCE) {
            return tolerance(quantity, place);
        }
        int decimals = Math.max(0, place);
        int finer = quantity.low() == 0 ? decimals
                : Math.max(decimals, Math.min(2, 1 - magnitude(quantity.low())));
        String low = plain(rounded(quantity.low(), finer).stripped());
        String high = plain(rounded(quantity.high(), finer).stripped());
        if (low.equals(high)) {
            return low;
        }
        String span = low + rangeDash(low, high) + high;
        boolean middle = Math.abs(quantity.value() - (quantity.low() + quantity.high()) / 2)
                <= 1e-6 * (quantity.high() - quantity.low());
        return middle ? span : plain(rounded(quantity.value(), finer).stripped()) + " (" + span + ")";
    }

    /** Whether its digits say how far it is known, so that nothing stands beside them. */
    public static boolean isOneNumber(Quantity quantity) {
        return quantity.spread() == Quantity.Spread.NONE || quantity.spread() == Quantity.Spread.RESOLUTION;
    }

    /** Between negative numbers the dash would read as a sign. */
    private static String rangeDash(String low, String high) {
        return low.indexOf(MINUS) >= 0 || high.indexOf(MINUS) >= 0 ? " … " : EN_DASH;
    }

    /** The place of the last digit that the uncertainty leaves: its decimals, or below zero tens, hundreds and so on. */
    private static int place(Quantity quantity) {
        return Math.min(counting(quantity.halfWidth()).scale(), MOST_DIGITS - 1 - magnitude(Math.max(-quantity.low(), quantity.high())));
    }

    /** The digits of an uncertainty that count: two if it begins with 1 or 2, else one. */
    private static Decimal counting(double halfWidth) {
        int kept = halfWidth / StrictMath.pow(10, magnitude(halfWidth)) < 3 ? 2 : 1;
        return Decimal.of(halfWidth).significant(kept).stripped();
    }

    private static int magnitude(double number) {
        return Decimal.of(number).magnitude();
    }

    private static Decimal significant(double number) {
        int decimals = DIGITS_WITHOUT_UNCERTAINTY - 1 - magnitude(number);
        return rounded(number, Math.max(0, decimals)).stripped();
    }

    private static Decimal rounded(double number, int decimals) {
        return Decimal.of(number).rounded(decimals);
    }

    public String plain(Decimal number) {
        if (number.magnitude() < LEAST_WITHOUT_POWER && !number.isZero()) {
            return powerOfTen(number);
        }
        String text = number.size();
        int point = text.indexOf('.');
        String whole = point < 0 ? text : text.substring(0, point);
        String rest = point < 0 ? "" : decimalMark + text.substring(point + 1);
        return (number.isNegative() ? String.valueOf(MINUS) : "") + grouped(whole) + rest;
    }

    private String powerOfTen(Decimal number) {
        Decimal digits = number.significant(DIGITS_WITHOUT_UNCERTAINTY).stripped();
        int power = digits.magnitude();
        String exponent = String.valueOf(power).chars()
                .mapToObj(c -> c == '-' ? "⁻" : String.valueOf("⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(c - '0')))
                .collect(Collectors.joining());
        return plain(digits.shifted(-power)) + " × 10" + exponent;
    }

    private static String grouped(String whole) {
        if (whole.length() < 5) {
            return whole;
        }
        StringBuilder text = new StringBuilder(whole);
        for (int at = whole.length() - 3; at > 0; at -= 3) {
            text.insert(at, GROUP);
        }
        return text.toString();
    }

    /** The symbol as printed: none for a pH, whose number stands alone, nor for counts. */
    public static String symbol(Unit unit) {
        return unit == Unit.PH || unit == Unit.COUNT ? "" : unit.symbol();
    }

    private static Quantity scale(Quantity quantity) {
        return switch (quantity.dimension()) {
            case VOLUME -> quantity.unit() == Unit.CUBIC_METRE ? quantity
                    : step(quantity, Unit.LITRE, Unit.MILLILITRE, Unit.MICROLITRE);
            case MASS -> step(quantity, Unit.KILOGRAM, Unit.GRAM, Unit.MILLIGRAM);
            case AREA -> step(quantity, Unit.SQUARE_METRE, Unit.SQUARE_CENTIMETRE, Unit.SQUARE_MILLIMETRE);
            case AMOUNT_PER_MASS -> Math.abs(quantity.in(Unit.MOLE_PER_KILOGRAM)) < LEAST_IN_MOLES && quantity.value() != 0
                    ? quantity.to(Unit.MILLIMOLE_PER_KILOGRAM) : quantity;
            case PRESSURE -> step(quantity, Unit.KILOPASCAL, Unit.PASCAL, Unit.PASCAL);
            default -> quantity;
        };
    }

    private static Quantity step(Quantity quantity, Unit large, Unit middle, Unit small) {
        if (Math.abs(quantity.in(large)) >= 0.9995) {
            return quantity.to(large);
        }
        return Math.abs(quantity.in(middle)) >= 0.0995 || quantity.value() == 0
                ? quantity.to(middle) : quantity.to(small);
    }
}
