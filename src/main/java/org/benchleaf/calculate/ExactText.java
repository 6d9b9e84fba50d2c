package org.benchleaf.calculate;

import java.util.List;
import java.util.stream.Collectors;
import org.benchleaf.quantity.Decimal;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Quantities as text that keeps every digit, both ends and how they came about, for a page that works with them. */
final class ExactText {

    private static final char NEXT = ';';

    private ExactText() {
    }

    /** The text of quantities, such as {@code 25.0 MILLIMETRE}, or value, ends, unit and spread. */
    static String of(List<Quantity> quantities) {
        return quantities.stream().map(ExactText::of).collect(Collectors.joining(String.valueOf(NEXT)));
    }

    /** The quantities of a text that {@link #of} made. */
    static List<Quantity> read(String text) {
        return Cells.cut(text, NEXT).stream().map(ExactText::one).toList();
    }

    private static String of(Quantity quantity) {
        String value = Decimal.text(quantity.value());
        return quantity.spread() == Quantity.Spread.NONE ? value + " " + quantity.unit().name()
                : String.join(" ", value, quantity.unit().name(), quantity.spread().name(), Decimal.text(quantity.low()),
                        Decimal.text(quantity.high()));
    }

    private static Quantity one(String text) {
        List<String> cells = Cells.cut(text, ' ');
        double value = Decimal.number(cells.get(0));
        Unit unit = Unit.valueOf(cells.get(1));
        return cells.size() == 2 ? Quantity.of(value, unit)
                : new Quantity(value, Decimal.number(cells.get(3)), Decimal.number(cells.get(4)), unit,
                        Quantity.Spread.valueOf(cells.get(2)));
    }
}
