package org.benchleaf.compose.part;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.words.NumberText;

/**
 * The decimals that a measured result can carry where no spread is known: a colour difference to 0.1, a change of size
 * to 0.1 % with a steel rule, a share left of what was counted to 0.1 %,
 * a mean, a standard deviation or a change to one decimal beyond the readings that it was
 * worked out from where there are three or more, and to the step of the readings where there are fewer (common practice, no source).
 */
public final class Resolution {

    private static final Map<String, Integer> DECIMALS = Map.of("colour-difference", 1, "yellowness", 1,
            "size-change", 1, "share-left", 1, "summary", 2, "reach", 2);
    private static final Set<String> OF_READINGS = Set.of("summary", "reach", "activity-mean", "change", "place-changes");
    private static final Set<String> READINGS = Set.of("readings", "before", "after");

    /** A mean of fewer is told no finer than its readings (common practice, no source). */
    private static final int FEWEST = 3;

    private Resolution() {
    }

    /** The most decimals of a figure; empty where three significant digits are right. */
    public static OptionalInt of(Figure figure) {
        if (figure.value().unit() == Unit.COUNT || isChance(figure)) {
            return OptionalInt.empty();
        }
        if (isStated(figure)) {
            return OptionalInt.of(figure.value().spread() == Quantity.Spread.RESOLUTION ? decimals(step(figure.value()))
                    : NumberText.decimalsOf(figure.value().value()));
        }
        Optional<BigDecimal> step = OF_READINGS.contains(figure.method()) ? step(figure) : Optional.empty();
        if (step.isPresent()) {
            return OptionalInt.of(isReach(figure) || readings(figure) < FEWEST ? decimals(step.get()) : ofMeans(step.get()));
        }
        Integer decimals = DECIMALS.get(figure.method());
        return decimals == null ? OptionalInt.empty() : OptionalInt.of(decimals);
    }

    /** The step to which a mean or change of fewer than three readings is told: that of the readings themselves. */
    static Optional<Quantity> stepOf(Figure figure) {
        return OF_READINGS.contains(figure.method()) && !isReach(figure) && !isChance(figure)
                && figure.value().unit() != Unit.COUNT && readings(figure) < FEWEST
                ? step(figure).map(step -> Quantity.of(step.doubleValue(), figure.value().unit())) : Optional.empty();
    }

    /** The step of the readings behind a figure, however many they are; empty if it is of none. */
    public static Optional<Quantity> stepAsRead(Figure figure) {
        return isOfReadings(figure) && figure.value().unit() != Unit.COUNT
                ? step(figure).map(step -> Quantity.of(step.doubleValue(), figure.value().unit())) : Optional.empty();
    }

    /** The decimals of a number read in such steps. */
    static int decimals(BigDecimal step) {
        return Math.max(0, step.stripTrailingZeros().scale());
    }

    /** The decimals of a mean of three readings or more: one digit beyond the step, so two for 0.1 and one for 0.5. */
    static int ofMeans(BigDecimal step) {
        BigDecimal digits = step.stripTrailingZeros();
        return Math.max(0, decimals(step) + (digits.unscaledValue().equals(BigInteger.ONE) ? 1 : 0));
    }

    /** Whether a figure is what a report states, which keeps every digit and word that it was stated with. */
    static boolean isStated(Figure figure) {
        return figure.key().name().startsWith(FigureKey.STATED);
    }

    /** Whether a figure is a mean, a spread or a change of readings. */
    static boolean isOfReadings(Figure figure) {
        return OF_READINGS.contains(figure.method()) && !isChance(figure) && !isMeanOfSpots(figure);
    }

    /** Whether a figure tells the smallest and the largest of several readings, which keep the readings' own digits. */
    static boolean isReach(Figure figure) {
        return Set.of("reach", "place-changes").contains(figure.method()) && !isMeanOfSpots(figure);
    }

    /** Whether a figure is the mean of several spots with the smallest and the largest of them. */
    public static boolean isMeanOfSpots(Figure figure) {
        return figure.method().equals("reach") && !figure.key().qualifier().isEmpty();
    }

    /** Whether a figure tells how often chance alone would give as much. */
    static boolean isChance(Figure figure) {
        return figure.key().name().equals("change-p");
    }

    /** The coarsest step of the readings that were put in; empty if no reading of the case file was. */
    private static Optional<BigDecimal> step(Figure figure) {
        List<Quantity> read = figure.inputs().stream().filter(given -> READINGS.contains(given.key()))
                .flatMap(given -> given.values().stream()).toList();
        return read.stream().anyMatch(one -> one.spread() == Quantity.Spread.RESOLUTION)
                ? read.stream().max(Comparator.comparingDouble(Quantity::halfWidth)).map(Resolution::step)
                : read.stream().map(one -> BigDecimal.ONE.movePointLeft(NumberText.decimalsOf(one.value())))
                        .min(Comparator.naturalOrder());
    }

    private static BigDecimal step(Quantity reading) {
        return BigDecimal.valueOf(reading.step()).round(new MathContext(3, RoundingMode.HALF_UP)).stripTrailingZeros();
    }

    /** How many readings it is of; of a change those of the side that has fewer. */
    private static long readings(Figure figure) {
        return READINGS.stream().map(key -> figure.inputs().stream().filter(given -> given.key().equals(key))
                .mapToLong(given -> given.values().size()).sum()).filter(count -> count > 0)
                .mapToLong(Long::longValue).min().orElse(0);
    }
}
