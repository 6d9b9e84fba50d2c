package org.benchleaf.derive.hazard;

import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.benchleaf.calculate.Inputs;
import org.benchleaf.calculate.Outcome;
import org.benchleaf.derive.figure.Job;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Reads flash points of ethanol in water off the published table, by the calculation that the pages cite. */
final class EthanolFlash implements Function<Quantity, Optional<Quantity>> {

    private final BiFunction<String, Inputs, Outcome> work;

    EthanolFlash(BiFunction<String, Inputs, Outcome> work) {
        this.work = work;
    }

    /** The flash point at a strength by volume; empty where the table has none. */
    @Override
    public Optional<Quantity> apply(Quantity strength) {
        Outcome outcome = work.apply("ethanol-mixture", Inputs.none()
                .with("strength", strength, Job.CASE_FILE)
                .with("volume", Quantity.of(100, Unit.MILLILITRE), Job.USUAL)
                .with("stock", Quantity.of(100, Unit.PERCENT_BY_VOLUME), Job.USUAL));
        return outcome instanceof Outcome.Worked worked
                ? Optional.ofNullable(worked.numbers().get("flash-point")) : Optional.empty();
    }
}
