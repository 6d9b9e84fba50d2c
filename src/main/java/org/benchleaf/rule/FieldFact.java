package org.benchleaf.rule;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * What a field of the case says: words, an amount or a day. Fields that say nothing have no fact at all.
 *
 * @param words the words; those of a list in order
 * @param day the first day that it may be
 * @param last the last day that it may be
 */
record FieldFact(List<String> words, Optional<Quantity> amount, Optional<LocalDate> day,
        Optional<LocalDate> last) {

    static final Optional<FieldFact> NONE = Optional.empty();

    FieldFact {
        words = List.copyOf(words);
    }

    static Optional<FieldFact> text(String text) {
        return words(List.of(text));
    }

    static Optional<FieldFact> text(Optional<String> text) {
        return text.flatMap(FieldFact::text);
    }

    static Optional<FieldFact> words(Collection<String> words) {
        List<String> said = words.stream().filter(WordComparison::known).toList();
        return said.isEmpty() ? NONE : Optional.of(new FieldFact(said, Optional.empty(), Optional.empty(), Optional.empty()));
    }

    static Optional<FieldFact> amount(Optional<Quantity> amount) {
        return amount.map(quantity -> new FieldFact(List.of(), Optional.of(quantity.asStated()), Optional.empty(), Optional.empty()));
    }

    static Optional<FieldFact> count(Optional<Integer> count) {
        return amount(count.map(Quantity::count));
    }

    static Optional<FieldFact> day(Optional<LocalDate> day) {
        return days(day, day);
    }

    /** A day between two. */
    static Optional<FieldFact> days(Optional<LocalDate> first, Optional<LocalDate> last) {
        return first.map(date -> new FieldFact(List.of(), Optional.empty(), first, last));
    }

    /** A fact only where it is so. */
    static Optional<FieldFact> flag(boolean so) {
        return so ? text("yes") : NONE;
    }

    /**
     * Whether this comes to more than another fact, or is a later day. Two ranges, or months, that overlap leave it open: either may be
     * the greater in the part that was used. No, if they differ in kind.
     */
    Truth moreThan(FieldFact other) {
        if (day.isPresent() && other.day.isPresent()) {
            boolean surely = day.get().isAfter(other.last.orElse(other.day.get()));
            boolean perhaps = last.orElse(day.get()).isAfter(other.day.get());
            return perhaps && !surely ? Truth.CANNOT_TELL : Truth.of(surely);
        }
        if (amount.isEmpty() || other.amount.isEmpty()) {
            return Truth.NO;
        }
        Quantity one = amount.get();
        Quantity two = other.amount.get();
        boolean surely = compare(one, one.low(), two, two.high()).filter(sign -> sign > 0).isPresent();
        boolean perhaps = compare(one, one.high(), two, two.low()).filter(sign -> sign > 0).isPresent();
        return perhaps && !surely ? Truth.CANNOT_TELL : Truth.of(surely);
    }

    /**
     * Whether the upper end lies above a limit; empty if it cannot be compared. A range is asked at its worst end: a bath of
     * 58 °C to 62 °C has been above 60 °C, and a pH known no better may be.
     */
    Optional<Boolean> above(Quantity limit) {
        return amount.flatMap(own -> compare(own, own.high(), limit, limit.value())).map(sign -> sign > 0);
    }

    /** Whether the lower end lies below a limit, its worst end; empty if it cannot be compared. */
    Optional<Boolean> below(Quantity limit) {
        return amount.flatMap(own -> compare(own, own.low(), limit, limit.value())).map(sign -> sign < 0);
    }

    private static Optional<Integer> compare(Quantity own, double end, Quantity limit, double limitEnd) {
        if (own.dimension() == limit.dimension()) {
            return Optional.of(Double.compare(end * own.unit().factor(), limitEnd * limit.unit().factor()));
        }
        boolean numbers = isNumber(own.dimension()) && isNumber(limit.dimension());
        return numbers ? Optional.of(Double.compare(end, limitEnd)) : Optional.empty();
    }

    private static boolean isNumber(Dimension dimension) {
        return dimension == Dimension.COUNT || dimension == Dimension.NUMBER;
    }

    /** The amount in the unit the trade usually writes its kind in. */
    Optional<Double> usual() {
        return amount.map(own -> own.in(usualUnit(own)));
    }

    private static Unit usualUnit(Quantity quantity) {
        return Unit.usual(quantity.dimension());
    }
}
