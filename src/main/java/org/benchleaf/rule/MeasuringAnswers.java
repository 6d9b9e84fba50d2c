package org.benchleaf.rule;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.model.Instrument;
import org.benchleaf.model.Part;
import org.benchleaf.model.PhKind;
import org.benchleaf.model.Result;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** What rules ask about measuring: a meter ready for its reading, both sides measured, methods not mixed. */
final class MeasuringAnswers {

    private static final String PH = "pH";

    private final CaseFacts facts;

    MeasuringAnswers(CaseFacts facts) {
        this.facts = facts;
    }

    /**
     * Whether a pH meter was calibrated on the day of a step, with so many buffers and one near every reading; a step
     * at which no pH is read needs none. It cannot be told of a meter whose calibration is not given in full.
     */
    Judgement meterReady(Step step, Quantity buffers, Quantity near) {
        List<Double> expected = (step.kind() == StepKind.MEASURING ? measured() : inLiquids(step)).toList();
        return expected.isEmpty() ? Judgement.YES_BY_SILENCE : Judgement.any(facts.treatment.instruments().stream()
                .filter(MeasuringAnswers::isPhMeter), meter -> Judgement.all(Stream.of(calibrated(meter, step),
                        buffered(meter, expected, buffers, near)), one -> one));
    }

    private static boolean isPhMeter(Instrument instrument) {
        return WordComparison.holds(instrument.is(), PH) && !WordComparison.holds(instrument.is(), "strip");
    }

    private static Judgement calibrated(Instrument meter, Step step) {
        boolean perhaps = step.within().filter(span -> meter.calibrated().stream().anyMatch(span::holds)).isPresent();
        return meter.calibrated().isEmpty() || perhaps ? Judgement.cannotTell(MissingFact.meter(meter, "calibrated"))
                : Judgement.of(step.within().isEmpty() && step.on().map(meter.calibrated()::contains).orElse(true));
    }

    private static Judgement buffered(Instrument meter, List<Double> expected, Quantity buffers, Quantity near) {
        return meter.buffers().isEmpty() ? Judgement.cannotTell(MissingFact.meter(meter, "buffers"))
                : Judgement.of(meter.buffers().size() >= buffers.value()
                        && expected.stream().allMatch(ph -> hasBufferNear(meter, ph, near.value())));
    }

    private static boolean hasBufferNear(Instrument meter, double ph, double near) {
        return meter.buffers().stream().anyMatch(buffer -> Math.abs(buffer.value() - ph) <= near);
    }

    /** Both ends of every pH that is aimed at in a liquid of the step, or was read in its baths. */
    private Stream<Double> inLiquids(Step step) {
        return Stream.concat(facts.liquidsOf(step).map(facts.liquids::ph).flatMap(Optional::stream),
                step.part(Part.Bath.class).stream().flatMap(bath -> bath.readings().stream())
                        .map(Part.BathReading::phFresh).flatMap(Optional::stream))
                .flatMap(ph -> Stream.of(ph.asStated().low(), ph.asStated().high()));
    }

    private Stream<Double> measured() {
        return facts.treatment.results().stream().filter(Result.Readings.class::isInstance)
                .map(Result.Readings.class::cast)
                .filter(result -> result.unit() == Unit.PH && !result.conditions().ph().contains(PhKind.STRIP))
                .flatMap(result -> result.after().stream());
    }

    /** Whether a measure has readings or words both before and after. */
    boolean beforeAndAfter(String measure) {
        return facts.treatment.results().stream().filter(result -> result.measure().is(measure))
                .anyMatch(result -> hasBefore(result) && hasAfter(result));
    }

    /** Whether a result names at most one of the methods and is not set against a result read by another. */
    boolean keptApart(Result result, List<String> methods) {
        List<String> own = named(result, methods);
        return own.size() < 2 && facts.treatment.results().stream()
                .filter(other -> other.measure().is(result.measure().word()) && completes(other, result))
                .allMatch(other -> named(other, methods).equals(own));
    }

    /** Whether one has only what is before and the other only what is after, so that a reader takes them as a pair. */
    private static boolean completes(Result one, Result other) {
        return hasBefore(one) && !hasAfter(one) && hasAfter(other) && !hasBefore(other)
                || hasAfter(one) && !hasBefore(one) && hasBefore(other) && !hasAfter(other);
    }

    private static List<String> named(Result result, List<String> methods) {
        String text = result.ask(new Method()).toLowerCase(Locale.ROOT);
        return methods.stream().filter(method -> WordComparison.holds(text, method)).toList();
    }

    private static boolean hasBefore(Result result) {
        return result.ask(new Sides(true));
    }

    private static boolean hasAfter(Result result) {
        return result.ask(new Sides(false));
    }

    private static final class Method implements Result.Kinds<String> {
        @Override
        public String readings(Result.Readings result) {
            return result.method();
        }

        @Override
        public String colour(Result.Colour result) {
            return "";
        }

        @Override
        public String size(Result.Size result) {
            return result.method();
        }

        @Override
        public String reserve(Result.Reserve result) {
            return result.method().orElse("");
        }

        @Override
        public String stated(Result.Stated result) {
            return result.method();
        }

        @Override
        public String words(Result.Words result) {
            return result.method();
        }

        @Override
        public String notMeasured(Result.NotMeasured result) {
            return "";
        }
    }

    /** Whether a result has something before, or after. */
    private record Sides(boolean before) implements Result.Kinds<Boolean> {
        @Override
        public Boolean readings(Result.Readings result) {
            return !(before ? result.before() : result.after()).isEmpty();
        }

        @Override
        public Boolean colour(Result.Colour result) {
            return result.spots().stream().anyMatch(spot -> !(before ? spot.before() : spot.after()).isEmpty());
        }

        @Override
        public Boolean size(Result.Size result) {
            return true;
        }

        @Override
        public Boolean reserve(Result.Reserve result) {
            return !before;
        }

        @Override
        public Boolean stated(Result.Stated result) {
            return (before ? result.before() : result.after()).isPresent();
        }

        @Override
        public Boolean words(Result.Words result) {
            return (before ? result.before() : result.after()).isPresent();
        }

        @Override
        public Boolean notMeasured(Result.NotMeasured result) {
            return false;
        }
    }
}
