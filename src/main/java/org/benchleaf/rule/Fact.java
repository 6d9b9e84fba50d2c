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
 */
record Fact(List<String> words, Optional<Quantity> amount, Optional<LocalDate> day) {

    static final Optional<Fact> NONE = Optional.empty();

    Fact {
        words = List.copyOf(words);
    }

    static Optional<Fact> text(String text) {
        return words(List.of(text));
    }

    static Optional<Fact> text(Optional<String> text) {
        return text.flatMap(Fact::text);
    }

    static Optional<Fact> words(Collection<String> words) {
        List<String> said = words.stream().filter(Words::known).toList();
        return said.isEmpty() ? NONE : Optional.of(new Fact(said, Optional.empty(), Optional.empty()));
    }

    static Optional<Fact> amount(Optional<Quantity> amount) {
        return amount.map(quantity -> new Fact(List.of(), Optional.of(quantity.asStated()), Optional.empty()));
    }

    static Optional<Fact> count(Optional<Integer> count) {
        return amount(count.map(Quantity::count));
    }

    static Optional<Fact> day(Optional<LocalDate> day) {
        return day.map(date -> new Fact(List.of(), Optional.empty(), Optional.of(date)));
    }

    /** A fact only where it is so. */
    static Optional<Fact> flag(boolean so) {
        return so ? text("yes") : NONE;
    }

    /** Whether this comes to more than another fact: a greater upper end, or a later day; empty if they differ in kind. */
    Optional<Boolean> moreThan(Fact other) {
        if (day.isPresent() && other.day.isPresent()) {
            return Optional.of(day.get().isAfter(other.day.get()));
        }
        if (amount.isPresent() && other.amount.isPresent()) {
            return compare(amount.get(), amount.get().high(), other.amount.get()).map(sign -> sign > 0);
        }
        return Optional.empty();
    }

    /** Whether the upper end lies above a limit; empty if it cannot be compared. */
    Optional<Boolean> above(Quantity limit) {
        return amount.flatMap(own -> compare(own, own.high(), limit)).map(sign -> sign > 0);
    }

    /** Whether the lower end lies below a limit; empty if it cannot be compared. */
    Optional<Boolean> below(Quantity limit) {
        return amount.flatMap(own -> compare(own, own.low(), limit)).map(sign -> sign < 0);
    }

    private static Optional<Integer> compare(Quantity own, double end, Quantity limit) {
        if (own.dimension() == limit.dimension()) {
            return Optional.of(Double.compare(end * own.unit().factor(), limit.value() * limit.unit().factor()));
        }
        boolean numbers = isNumber(own.dimension()) && isNumber(limit.dimension());
        return numbers ? Optional.of(Double.compare(end, limit.value())) : Optional.empty();
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
