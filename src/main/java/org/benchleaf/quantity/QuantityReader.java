package org.benchleaf.quantity;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;

/**
 * Reads quantities as people write them: {@code 1.5 L}, {@code 40 % v/v}, {@code 15 min to 30 min},
 * {@code 15 to 30 min}, {@code 7.4 ± 0.1}, {@code pH 8.5}, {@code 1e-10 m²/s}.
 *
 * <p>Nothing is guessed: a form that means several things in this trade comes back as a {@link Slip} that says
 * which, so that the author can be asked.
 */
public final class QuantityReader {

    private static final String NUMBER = "[+-]?\\d+(?:\\.\\d+)?(?:[eE][+-]?\\d+)?";
    /** A unit does not begin with a digit, but for the rates, whose symbols do: "2 1/h". */
    private static final String UNIT_TEXT = "(?:1/|[^\\d\\s±–])(?:.*?[^\\s])?";
    /** Far beyond any amount; a number that no double can hold would break every formula. */
    private static final double LARGEST = 1e100;
    /** No quantity takes more letters; the patterns below are quick only where a text is short. */
    static final int LONGEST = 200;
    private static final Pattern DIGITS = Pattern.compile(NUMBER);
    private static final Pattern ONE = Pattern.compile("(" + NUMBER + ")\\s*(" + UNIT_TEXT + ")?");
    private static final Pattern RANGE = Pattern.compile(
            "(" + NUMBER + ")\\s*(" + UNIT_TEXT + ")??\\s*(?:\\bto\\b|–)\\s*(" + NUMBER + ")\\s*(" + UNIT_TEXT + ")?");
    private static final Pattern TOLERANCE = Pattern.compile(
            "(" + NUMBER + ")\\s*(" + UNIT_TEXT + ")??\\s*±\\s*(" + NUMBER + ")\\s*(" + UNIT_TEXT + ")?");
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final Pattern PH = Pattern.compile("^pH\\s++(.+)");
    private static final Pattern COMMA = Pattern.compile("\\d,\\d");
    private static final Pattern COLON = Pattern.compile("^\\d++(?:\\.\\d++)?+\\s*+:\\s*+\\d.*");
    private static final Pattern DROPS = Pattern.compile(
            "(?i)\\b(drops?|teaspoons?|tsp|tablespoons?|tbsp|cups?|pints?|pinch|pinches|spoons?|spoonfuls?)\\b");

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
        /** Above nothing, and less than {@link Dimension#least()} or more than {@link Dimension#most()}. */
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

    /**
     * The quantity as a reading: a number without spread gets that of the last digit in the text that it was read from.
     * Things counted stay exact.
     *
     * @param quantity what was read from the text
     */
    public static Quantity asReading(Quantity quantity, String text) {
        Matcher digits = DIGITS.matcher(text);
        return quantity.spread() == Quantity.Spread.NONE && quantity.unit() != Unit.COUNT && digits.find()
                ? Quantity.reading(quantity.value(), new BigDecimal(digits.group()).ulp().doubleValue(), quantity.unit())
                : quantity;
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
        return written.map(number -> Math.abs(number) * scale)
                .allMatch(size -> size == 0 || dimension.least() <= size && size <= dimension.most());
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
        Matcher ph = PH.matcher(trimmed);
        // "pH 8 to pH 9" says its kind twice.
        String body = ph.matches() ? ph.group(1).replaceFirst("(\\bto\\b|–)(\\s*)pH\\s+", "$1$2") : trimmed;
        int shift = lead + (ph.matches() ? ph.start(1) : 0);
        Optional<Dimension> dimension = ph.matches() ? Optional.of(Dimension.ACIDITY) : wanted;
        if (COMMA.matcher(body).find()) {
            return Reading.slipped(Slip.DECIMAL_COMMA, shift + body.indexOf(','), body);
        }
        if (COLON.matcher(body).matches()) {
            return Reading.slipped(Slip.COLON_RATIO, shift, body);
        }
        if (DROPS.matcher(body).find()) {
            return Reading.slipped(Slip.HOUSEHOLD_MEASURE, shift, body);
        }
        Matcher tolerance = TOLERANCE.matcher(body);
        if (tolerance.matches()) {
            return pair(tolerance, dimension, shift, true);
        }
        Matcher range = RANGE.matcher(body);
        if (range.matches()) {
            return pair(range, dimension, shift, false);
        }
        Matcher one = ONE.matcher(body);
        if (!one.matches() || !holds(number(one.group(1)))) {
            return Reading.slipped(Slip.NOT_A_NUMBER, shift, body);
        }
        return unit(one.group(2), dimension, shift + Math.max(one.start(2), 0), body,
                found -> Reading.of(Quantity.of(number(one.group(1)), found)));
    }

    private static Reading pair(Matcher pair, Optional<Dimension> wanted, int shift, boolean tolerance) {
        double first = number(pair.group(1));
        double second = number(pair.group(3));
        if (!holds(first) || !holds(second)) {
            return Reading.slipped(Slip.NOT_A_NUMBER, shift, pair.group());
        }
        String secondUnit = pair.group(4);
        String firstUnit = pair.group(2) == null ? secondUnit : pair.group(2);
        return unit(firstUnit, wanted, shift + Math.max(pair.start(2), 0), pair.group(), a ->
                unit(secondUnit == null ? firstUnit : secondUnit, wanted, shift + Math.max(pair.start(4), 0),
                        pair.group(), b -> {
                    if (a.dimension() != b.dimension()) {
                        return Reading.slipped(Slip.OTHER_DIMENSION, shift + Math.max(pair.start(4), 0), b.symbol());
                    }
                    double end = second * b.factor() / a.factor();
                    if (tolerance) {
                        return end < 0
                                ? Reading.slipped(Slip.NOT_A_NUMBER, shift + pair.start(3), pair.group(3))
                                : Reading.of(Quantity.plusMinus(first, end, a));
                    }
                    // A range is kept in the unit of its high end: "45 min to 2 h" reads better in hours.
                    double start = first * a.factor() / b.factor();
                    return start > second
                            ? Reading.slipped(Slip.RANGE_BACKWARDS, shift, pair.group())
                            : Reading.of(Quantity.range(start, second, b));
                }));
    }

    private static Reading unit(String written, Optional<Dimension> wanted, int offset, String whole,
            java.util.function.Function<Unit, Reading> then) {
        if (written == null) {
            return bare(wanted).map(then).orElseGet(() -> Reading.slipped(Slip.NO_UNIT, offset, whole));
        }
        String spelling = SPACES.matcher(written.strip()).replaceAll(" ");
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
        double number = Double.parseDouble(digits);
        return number == 0 && isSome(digits) ? Double.MIN_VALUE : number;
    }

    /** Whether a digit above 0 stands before the exponent. */
    private static boolean isSome(String digits) {
        return digits.chars().takeWhile(sign -> sign != 'e' && sign != 'E').anyMatch(sign -> sign >= '1' && sign <= '9');
    }
}
