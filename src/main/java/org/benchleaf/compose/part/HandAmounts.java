package org.benchleaf.compose.part;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.calculate.Digits;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey.Owner;
import org.benchleaf.model.Formulary;
import org.benchleaf.quantity.Amount;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.words.NumberText;
import org.benchleaf.words.Words;

/**
 * Tells the amounts of steps, totals and classes as a hand can measure them: what is less than anybody weighs or pours as
 * such, a bath that is filled to a mark to two digits. The exact value stands in the working, but for what is less than
 * anybody weighs or pours, of which no digit is of use.
 */
public final class HandAmounts {

    private static final Set<Owner> BY_HAND = Set.of(Owner.STEP, Owner.TOTAL, Owner.CLASS);
    private static final Set<String> TO_A_MARK = Set.of("volume", "total", "tray-volume", "tray-total", "record-total");
    private static final Map<Dimension, String> LEAST = Map.of(Dimension.MASS, "least-weighed", Dimension.VOLUME, "least-poured",
            Dimension.SHARE, "least-share");

    private final Words words;
    private final NumberText numbers;
    private final Formulary formulary;

    HandAmounts(Words words, NumberText numbers, Formulary formulary) {
        this.words = words;
        this.numbers = numbers;
        this.formulary = formulary;
    }

    /** The amount in words of its own; empty where its number stands as it is. What an author wrote is never changed. */
    Optional<Amount> of(Figure figure) {
        Quantity value = figure.value();
        if (!BY_HAND.contains(figure.key().owner()) || figure.method().equals("as-given")) {
            return Optional.empty();
        }
        if (isToAMark(figure) && NumberText.isOneNumber(value)) {
            return Optional.of(numbers.told(value, Digits.TO_A_MARK));
        }
        return least(value).filter(least -> value.lowIn(least.unit()) < least.value()).map(least -> small(value, least));
    }

    /** Whether it is less than anybody weighs or pours, at its highest too. */
    boolean isBelowUse(Figure figure) {
        Quantity value = figure.value();
        return BY_HAND.contains(figure.key().owner()) && !figure.method().equals("as-given")
                && least(value).filter(least -> isBelow(value, least)).isPresent();
    }

    /** The least of its kind that anybody weighs or pours; empty of what is nothing at all. */
    private Optional<Quantity> least(Quantity value) {
        return Optional.ofNullable(LEAST.get(value.dimension())).map(name -> formulary.constant(name).value())
                .filter(least -> value.highIn(least.unit()) > 0);
    }

    private static boolean isBelow(Quantity value, Quantity least) {
        return value.highIn(least.unit()) < least.value();
    }

    /** Whether a hand fills it to a mark. */
    public static boolean isToAMark(Figure figure) {
        return figure.key().owner() == Owner.STEP && figure.value().dimension() == Dimension.VOLUME
                && TO_A_MARK.contains(figure.key().name());
    }

    private Amount small(Quantity value, Quantity least) {
        return new Amount(isBelow(value, least) ? words.say("hand.less-than", "amount", numbers.written(least).text())
                : words.say("hand.at-most", "amount", numbers.roughly(Quantity.of(value.high(), value.unit()), 2).text()), "");
    }
}
