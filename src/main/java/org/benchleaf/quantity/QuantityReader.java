package org.benchleaf.quantity;

import java.util.Optional;
import java.util.function.Function;
import java.util.stream.DoubleStream;

/**
 * Reads quantities as people write them: {@code 1.5 L}, {@code 40 % v/v}, {@code 15 min to 30 min},
 * {@code 15 to 30 min}, {@code 7.4 ± 0.1}, {@code pH 8.5}, {@code 1e-10 m²/s}.
 *
 * <p>Nothing is guessed: a form that means several things in this trade comes back as a {@link Slip} that says
 * which, so that the author can be asked.
 */
public final class QuantityReader {

    /** Far beyond any amount; a number that no double can hold would break every formula. */
    private static final double LARGEST = 1e100;
    /** No quantity takes more letters. */
    static final int LONGEST = 200;

    /** Why a text could not be read as a quantity. */
    public enum Slip {
        /** Nothing written. */
        EMPTY,
        /** A comma between digits: a decimal comma or grouped thousands. */
        DECIMAL_COMMA,
        /** A percentage that does not say of what. */
        BARE_PERCENT,
        /** A ratio such as 1:4, which may mean one in four or one to four. */
        COLON_RATIO,
        /** Drops, spoons or pinches: a measure that differs from hand to hand. */
        HOUSEHOLD_MEASURE,
        /** A number without the unit it needs. */
        NO_UNIT,
        /** A unit that the table does not have. */
        UNKNOWN_UNIT,
        /** A unit of another dimension than the field asks for. */
        OTHER_DIMENSION,
        /** The second end of a range lies below the first. */
        RANGE_BACKWARDS,
        /**
         * Not nothing, and smaller than {@link Dimension#least()}, more than {@link Dimension#most()} or below {@link Dimension#lowest()}.
         */
        BEYOND_LIMITS,
        /** No number where one is needed. */
        NOT_A_NUMBER
    }

    /**
     * What came of reading: a quantity, or the slip and the words it stands in.
     *
     * @param quantity the quantity, if the text could be read
     * @param slip why not, if it could not
     * @param offset where in the text the slip begins, counted from 0
     * @param found the words that the slip stands in
     */
    public record Reading(Optional<Quantity> quantity, Optional<Slip> slip, int offset, String found) {
        static Reading of(Quantity quantity) {
            return new Reading(Optional.of(quantity), Optional.empty(), 0, "");
        }

        static Reading slipped(Slip slip, int offset, String found) {
            return new Reading(Optional.empty(), Optional.of(slip), offset, found);
        }
    }

    private QuantityReader() {
    }

    /**
     * Reads a text as a quantity of one dimension.
     *
     * <p>Counts and plain numbers are written bare. A share ({@link Dimension#SHARE}) and a humidity accept a bare
     * {@code %}, because only one meaning is left there; every other dimension refuses it with
     * {@link Slip#BARE_PERCENT}. A pH is written {@code pH 8.5} or, where a pH is expected, bare.
     */
    public static Reading read(String text, Dimension wanted) {
        Reading reading = read(text, Optional.of(wanted));
        if (reading.quantity().isPresent() && reading.quantity().get().dimension() != wanted) {
            return Reading.slipped(Slip.OTHER_DIMENSION, 0, reading.quantity().get().unit().symbol());
        }
        return reading;
    }

    /** Reads a text as a quantity of whatever dimension its unit has; a bare number is a plain number. */
    public static Reading read(String text) {
        return read(text, Optional.empty());
    }

    /** Whether a comma stands between two digits, where it may be a decimal mark. */
    public static boolean hasCommaInNumber(String text) {
        return new QuantityScan(text).hasCommaInNumber();
    }

    /**
     * The quantity as a reading: a number without spread gets that of the last digit in the text that it was read from.
     * Things counted stay exact.
     *
     * @param quantity what was read from the text
     */
    public static Quantity asReading(Quantity quantity, String text) {
        Optional<String> digits = quantity.spread() == Quantity.Spread.NONE && quantity.unit() != Unit.COUNT
                ? new QuantityScan(text).firstNumber() : Optional.empty();
        return digits.map(number -> Quantity.reading(quantity.value(), Decimal.step(Decimal.read(number).scale()),
                quantity.unit())).orElse(quantity);
    }

    private static Reading read(String text, Optional<Dimension> wanted) {
        Reading reading = written(text, wanted);
        return reading.quantity().filter(quantity -> !withinLimits(quantity)).isPresent()
                ? Reading.slipped(Slip.BEYOND_LIMITS, text.indexOf(text.strip()), text.strip()) : reading;
    }

    /** Of a tolerance the value and its half width are what was written, of a range both ends. */
    private static boolean withinLimits(Quantity quantity) {
        DoubleStream written = quantity.spread() == Quantity.Spread.TOLERANCE
                ? DoubleStream.of(quantity.value(), quantity.halfWidth())
                : DoubleStream.of(quantity.low(), quantity.high());
        Dimension dimension = quantity.dimension();
        double scale = quantity.unit().factor() / Unit.usual(dimension).factor();
        return written.map(number -> number * scale).allMatch(amount -> amount == 0 || dimension.least() <= Math.abs(amount)
                && dimension.lowest() <= amount && amount <= dimension.most());
    }

    private static Reading written(String text, Optional<Dimension> wanted) {
        String trimmed = text.strip();
        int lead = text.indexOf(trimmed);
        if (trimmed.isEmpty()) {
            return Reading.slipped(Slip.EMPTY, 0, "");
        }
        if (trimmed.length() > LONGEST) {
            return Reading.slipped(Slip.NOT_A_NUMBER, lead, trimmed.substring(0, LONGEST) + "…");
        }
        int begin = new QuantityScan(trimmed).behindPh();
        if (begin == 0) {
            return body(trimmed, wanted, lead);
        }
        // "pH 8 to pH 9" says its kind twice.
        return body(new QuantityScan(trimmed.substring(begin)).withoutSecondPh(), Optional.of(Dimension.ACIDITY),
                lead + begin);
    }

    private static Reading body(String body, Optional<Dimension> wanted, int shift) {
        QuantityScan scan = new QuantityScan(body);
        if (scan.hasCommaInNumber()) {
            return Reading.slipped(Slip.DECIMAL_COMMA, shift + body.indexOf(','), body);
        }
        if (scan.isColonRatio()) {
            return Reading.slipped(Slip.COLON_RATIO, shift, body);
        }
        if (scan.hasHouseholdMeasure()) {
            return Reading.slipped(Slip.HOUSEHOLD_MEASURE, shift, body);
        }
        Optional<QuantityScan.Pair> tolerance = scan.tolerance();
        if (tolerance.isPresent()) {
            return pair(tolerance.get(), body, wanted, shift, true);
        }
        Optional<QuantityScan.Pair> range = scan.range();
        if (range.isPresent()) {
            return pair(range.get(), body, wanted, shift, false);
        }
        return scan.one().filter(one -> holds(number(one.digits())))
                .map(one -> unit(one.unit(), wanted, shift + one.unitFrom(), body,
                        found -> Reading.of(Quantity.of(number(one.digits()), found))))
                .orElseGet(() -> Reading.slipped(Slip.NOT_A_NUMBER, shift, body));
    }

    private static Reading pair(QuantityScan.Pair pair, String whole, Optional<Dimension> wanted, int shift,
            boolean tolerance) {
        QuantityScan.Term first = pair.first();
        QuantityScan.Term second = pair.second();
        if (!holds(number(first.digits())) || !holds(number(second.digits()))) {
            return Reading.slipped(Slip.NOT_A_NUMBER, shift, whole);
        }
        return unit(first.unit().or(second::unit), wanted, shift + first.unitFrom(), whole, a ->
                unit(second.unit().or(first::unit), wanted, shift + second.unitFrom(), whole, b -> {
                    if (a.dimension() != b.dimension()) {
                        return Reading.slipped(Slip.OTHER_DIMENSION, shift + second.unitFrom(), b.symbol());
                    }
                    return tolerance ? tolerance(pair, a, b, shift) : range(pair, a, b, whole, shift);
                }));
    }

    private static Reading tolerance(QuantityScan.Pair pair, Unit a, Unit b, int shift) {
        double half = number(pair.second().digits()) * b.factor() / a.factor();
        return half < 0 ? Reading.slipped(Slip.NOT_A_NUMBER, shift + pair.second().from(), pair.second().digits())
                : Reading.of(Quantity.plusMinus(number(pair.first().digits()), half, a));
    }

    /** A range is kept in the unit of its high end: "45 min to 2 h" reads better in hours. */
    private static Reading range(QuantityScan.Pair pair, Unit a, Unit b, String whole, int shift) {
        double start = number(pair.first().digits()) * a.factor() / b.factor();
        double end = number(pair.second().digits());
        return start > end ? Reading.slipped(Slip.RANGE_BACKWARDS, shift, whole)
                : Reading.of(Quantity.range(start, end, b));
    }

    private static Reading unit(Optional<String> written, Optional<Dimension> wanted, int offset, String whole,
            Function<Unit, Reading> then) {
        if (written.isEmpty()) {
            return bare(wanted).map(then).orElseGet(() -> Reading.slipped(Slip.NO_UNIT, offset, whole));
        }
        String spelling = new QuantityScan(written.get().strip()).withSingleSpaces();
        if (spelling.equals("%")) {
            if (wanted.filter(Dimension.SHARE::equals).isPresent()) {
                return then.apply(Unit.PERCENT);
            }
            if (wanted.filter(Dimension.HUMIDITY::equals).isPresent()) {
                return then.apply(Unit.PERCENT_HUMIDITY);
            }
            return Reading.slipped(Slip.BARE_PERCENT, offset, whole);
        }
        // "%v/v" is written by some; a percentage has more than its sign here, or it would be bare.
        Optional<Unit> apart = spelling.startsWith("%") && spelling.charAt(1) != ' '
                ? Unit.spelled("% " + spelling.substring(1)) : Optional.empty();
        return apart.or(() -> Unit.spelled(spelling)).map(then)
                .orElseGet(() -> Reading.slipped(Slip.UNKNOWN_UNIT, offset, spelling));
    }

    private static Optional<Unit> bare(Optional<Dimension> wanted) {
        if (wanted.isEmpty()) {
            return Optional.of(Unit.NONE);
        }
        return switch (wanted.get()) {
            case ACIDITY -> Optional.of(Unit.PH);
            case COUNT -> Optional.of(Unit.COUNT);
            case NUMBER -> Optional.of(Unit.NONE);
            default -> Optional.empty();
        };
    }

    private static boolean holds(double number) {
        return Math.abs(number) <= LARGEST;
    }

    /** What is too small for a double is still not nothing. */
    private static double number(String digits) {
        double number = Decimal.number(digits);
        return number == 0 && isSome(digits) ? Double.MIN_VALUE : number;
    }

    /** Whether a digit above 0 stands before the exponent. */
    private static boolean isSome(String digits) {
        return digits.chars().takeWhile(sign -> sign != 'e' && sign != 'E').anyMatch(sign -> sign >= '1' && sign <= '9');
    }
}
