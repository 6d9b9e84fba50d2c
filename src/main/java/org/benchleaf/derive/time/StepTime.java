package org.benchleaf.derive.time;

import java.util.List;
import java.util.Optional;
import org.benchleaf.derive.figure.BathWork;
import org.benchleaf.derive.figure.Minutes;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.message.FigureMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Part;
import org.benchleaf.model.StatedTime;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * How long one step takes, how much of that needs a person, and what happens inside it.
 *
 * @param step the step
 * @param takes in all
 * @param handsOn how much of it needs a person
 * @param lying how long it lies after it began, apart from the moments; for the calendar
 * @param atLeast whether nobody tells how long a part of it takes, so that it takes that long and more
 * @param moments changes and looks, from the start of the step
 */
public record StepTime(Step step, Minutes takes, Minutes handsOn, Minutes lying, boolean atLeast, List<Timeline.Moment> moments) {

    public StepTime {
        moments = List.copyOf(moments);
    }

    /**
     * Works out the time of a step: as written, or from its parts where nothing is written.
     *
     * @param baths how long its baths take to fill and to change; empty if it has none, or nothing can be said
     */
    public static StepTime of(Step step, Optional<BathWork> baths, WorkHours hours, Messages messages) {
        List<Timeline.Moment> moments = Moments.of(step, baths, hours);
        Minutes lying = lying(step, baths);
        Minutes fromParts = lastChange(moments).max(lying);
        Minutes takes = step.takes().map(StatedTime::span).map(Minutes::of).orElse(fromParts);
        if (takes.high() == 0 && step.timeMissing().isEmpty()) {
            messages.add(FigureMessages.STEP_WITHOUT_TIME.at(step.place(), "step", step.id()));
        }
        // Nothing is done to the sheet while its first bath is filled.
        checkLimit(step, baths.filter(any -> step.takes().isEmpty()).map(work -> takes.minus(work.filling())).orElse(takes), messages);
        Minutes handsOn = handsOn(step, takes, messages);
        return new StepTime(step, takes, handsOn, step.takes().map(StatedTime::span).map(Minutes::of).orElse(lying),
                step.takes().map(StatedTime::isOpen).orElse(hasTimedBaths(step) && baths.isEmpty()), moments);
    }

    private static boolean hasTimedBaths(Step step) {
        return step.part(Part.Bath.class).filter(Part.Bath::isTimed).isPresent();
    }

    /** Whether anybody told how long it takes. */
    boolean isKnown() {
        return takes.high() > 0;
    }

    /** Whether everything is told of how long it takes. */
    boolean isWhole() {
        return isKnown() && !atLeast;
    }

    private static Minutes lastChange(List<Timeline.Moment> moments) {
        return moments.stream().filter(moment -> moment.kind().equals(Moments.BLOTTER_CHANGE))
                .reduce((first, second) -> second).map(moment -> Minutes.of(moment.at())).orElse(Minutes.NONE);
    }

    /**
     * Baths, rinses, layers and heat follow one another; weight lies on while blotters are changed, and suction, light and
     * gas go on during the baths.
     */
    private static Minutes lying(Step step, Optional<BathWork> baths) {
        Minutes sum = hasTimedBaths(step) ? Moments.afterBath(step.part(Part.Bath.class).orElseThrow(), baths,
                step.part(Part.Bath.class).orElseThrow().baths()) : Minutes.NONE;
        sum = sum.plus(time(step.part(Part.Fixing.class).flatMap(Part.Fixing::rinse)));
        sum = sum.plus(time(step.part(Part.Heat.class).flatMap(Part.Heat::time)));
        Optional<Part.Layer> layer = step.part(Part.Layer.class);
        sum = sum.plus(time(layer.flatMap(Part.Layer::each)).times(layer.map(Part.Layer::times).orElse(1)));
        sum = sum.plus(time(step.part(Part.Ageing.class).flatMap(Part.Ageing::time)));
        sum = sum.max(time(step.part(Part.Suction.class).flatMap(Part.Suction::time)))
                .max(time(step.part(Part.Light.class).flatMap(Part.Light::time)))
                .max(time(step.part(Part.Gas.class).flatMap(Part.Gas::time)));
        return sum.max(time(step.part(Part.Press.class).flatMap(Part.Press::time)));
    }

    private static Minutes time(Optional<Quantity> written) {
        return written.map(Minutes::of).orElse(Minutes.NONE);
    }

    private static void checkLimit(Step step, Minutes takes, Messages messages) {
        step.atMost().filter(limit -> limit.dimension() == Dimension.TIME)
                .filter(limit -> takes.low() > limit.highIn(Unit.MINUTE))
                .ifPresent(limit -> messages.add(FigureMessages.STEP_LONGER_THAN_ALLOWED.at(step.place(),
                        "step", step.id(), "takes", Reading.minutes(takes.low()),
                        "limit", Reading.minutes(limit.highIn(Unit.MINUTE)))));
    }

    private static Minutes handsOn(Step step, Minutes takes, Messages messages) {
        if (step.handsOn().isEmpty()) {
            if (step.overnight() && takes.high() > Unit.DAY.factor() / Unit.MINUTE.factor() / 2) {
                messages.add(FigureMessages.NIGHT_WITHOUT_HANDS_ON.at(step.place(), "step", step.id()));
            }
            return takes;
        }
        Quantity written = step.handsOn().get().span();
        if (written.dimension() == Dimension.SHARE) {
            return new Minutes(takes.low() * written.low() * written.unit().factor(),
                    takes.usual() * written.value() * written.unit().factor(),
                    takes.high() * written.high() * written.unit().factor());
        }
        Minutes stated = step.handsOn().get().isOpen() ? Minutes.of(Quantity.between(written.lowIn(Unit.MINUTE), written.in(Unit.MINUTE),
                Math.max(written.lowIn(Unit.MINUTE), takes.high()), Unit.MINUTE)) : Minutes.of(written);
        if (stated.low() > takes.high()) {
            messages.add(FigureMessages.HANDS_ON_LONGER_THAN_STEP.at(step.place(), "step", step.id(),
                    "hands", Reading.minutes(stated.low()), "takes", Reading.minutes(takes.high())));
        }
        return stated.min(takes);
    }
}
