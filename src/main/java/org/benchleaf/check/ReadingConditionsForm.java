package org.benchleaf.check;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.message.FormMessages;
import org.benchleaf.model.Instrument;
import org.benchleaf.model.MeasuringConditions;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.PhKind;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.Node;

/** Reads how the numbers of a result were read: kind of pH, method after, ageing, and the smallest step that they tell. */
final class ReadingConditionsForm {

    static final String NUMBER = "[+-]?\\d+(\\.\\d+)?";

    /** Pads of indicator strips are told apart to half a unit (common practice, no source). */
    private static final BigDecimal STRIP_STEP = new BigDecimal("0.5");

    private final Fields fields;
    private final Unit unit;
    private final Optional<Instrument> instrument;

    ReadingConditionsForm(Fields fields, Unit unit, List<Instrument> instruments) {
        this.fields = fields;
        this.unit = unit;
        this.instrument = fields.text("instrument").flatMap(id ->
                instruments.stream().filter(one -> one.id().equals(id)).findFirst());
    }

    MeasuringConditions read() {
        String method = fields.text("method").orElse("");
        Set<PhKind> ph = unit != Unit.PH ? Set.of()
                : fields.word("kind", PhKind::named).map(Set::of).orElseGet(() -> MeasuringConditions.of(method).ph());
        return new MeasuringConditions(step(ph), ph, MissingValue.read(method).isEmpty(), fields.text("method after"),
                fields.text("aged"));
    }

    /** What is stated under {@code read to}, else the coarser of what the instrument shows and the last digit that was written. */
    private Optional<Quantity> step(Set<PhKind> ph) {
        Optional<Quantity> stated = fields.positive("read to", unit.dimension()).map(step -> step.to(unit));
        if (stated.isPresent()) {
            return stated;
        }
        List<Node.Scalar> numbers = numbers();
        Optional<BigDecimal> digit = numbers.stream().map(number -> new BigDecimal(number.text().strip()).ulp())
                .min(BigDecimal::compareTo).map(ulp -> ulp.min(BigDecimal.ONE));
        boolean halves = ph.contains(PhKind.STRIP) && numbers.stream().allMatch(number ->
                new BigDecimal(number.text().strip()).remainder(STRIP_STEP).signum() == 0);
        Optional<Quantity> shown = shown();
        shown.ifPresent(step -> numbers.stream().filter(number -> isFiner(number, step)).findFirst()
                .ifPresent(fine -> fields.messages().add(FormMessages.FINER_THAN_INSTRUMENT.at(fine.place(),
                        "found", fine.text(), "instrument", instrument.get().id(), "step", Amounts.plain(step.value())))));
        return Stream.concat(shown.stream(), digit.map(step -> halves ? step.max(STRIP_STEP) : step)
                .map(step -> Quantity.of(step.doubleValue(), unit)).stream())
                .reduce((one, other) -> one.value() < other.value() ? other : one);
    }

    private static boolean isFiner(Node.Scalar number, Quantity step) {
        return new BigDecimal(number.text().strip()).remainder(BigDecimal.valueOf(step.value())).signum() != 0;
    }

    /** The resolution of the instrument in the unit of the readings; a bare number is in theirs. */
    private Optional<Quantity> shown() {
        return instrument.flatMap(Instrument::resolution)
                .flatMap(step -> step.dimension() == Dimension.NUMBER ? Optional.of(Quantity.of(step.value(), unit))
                        : step.dimension() == unit.dimension() ? Optional.of(step.to(unit)) : Optional.empty());
    }

    private List<Node.Scalar> numbers() {
        return Stream.of("before", "after").flatMap(key -> fields.isScalar(key) ? fields.scalar(key).stream()
                : fields.has("file") ? Stream.empty() : fields.listed(key).stream())
                .filter(scalar -> scalar.text().strip().matches(NUMBER)).toList();
    }
}
