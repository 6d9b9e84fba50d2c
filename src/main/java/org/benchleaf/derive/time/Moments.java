package org.benchleaf.derive.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.benchleaf.derive.figure.BathWork;
import org.benchleaf.derive.figure.Minutes;
import org.benchleaf.model.Part;
import org.benchleaf.model.StatedTime;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** What happens inside a step: blotter changes, bath changes and looks, counted from its start. */
public final class Moments {

    static final String BLOTTER_CHANGE = "blotter change";
    public static final String BATH_CHANGE = "bath change";
    static final String LOOK = "look";

    /** More looks than this within one step would fill the sheet; the last ones follow the same rhythm. */
    private static final int MOST_LOOKS = 48;

    private Moments() {
    }

    static List<Timeline.Moment> of(Step step, Optional<BathWork> baths, WorkHours hours) {
        List<Timeline.Moment> moments = new ArrayList<>();
        step.part(Part.Bath.class).ifPresent(bath -> moments.addAll(bathChanges(bath, baths)));
        step.part(Part.Blotters.class).ifPresent(blotters -> moments.addAll(blotterChanges(blotters, hours)));
        step.part(Part.Chamber.class).flatMap(Part.Chamber::lookEvery)
                .ifPresent(every -> moments.addAll(looks(every, step.takes().map(StatedTime::span))));
        return moments;
    }

    /** A change lies between two baths, so that there is one fewer than baths. */
    private static List<Timeline.Moment> bathChanges(Part.Bath bath, Optional<BathWork> work) {
        List<Timeline.Moment> changes = new ArrayList<>();
        for (int number = 1; bath.isTimed() && number < bath.baths(); number++) {
            changes.add(new Timeline.Moment(BATH_CHANGE, number, afterBath(bath, work, number).quantity(), false));
        }
        return changes;
    }

    /** When a bath is over whose time is stated: the first is filled before it, and each one after it is changed. */
    static Minutes afterBath(Part.Bath bath, Optional<BathWork> work, int number) {
        Minutes lying = IntStream.rangeClosed(1, number).mapToObj(bath::lasting).map(StatedTime::span).map(Minutes::of)
                .reduce(Minutes.NONE, Minutes::plus);
        return work.map(told -> told.filling().plus(lying).plus(told.change().times(number - 1))).orElse(lying);
    }

    private static List<Timeline.Moment> blotterChanges(Part.Blotters blotters, WorkHours hours) {
        List<Timeline.Moment> changes = new ArrayList<>();
        Minutes clock = Minutes.NONE;
        for (Optional<Quantity> change : blotters.changes()) {
            clock = clock.plus(change.map(Minutes::of).orElse(hours.night()));
            changes.add(new Timeline.Moment(BLOTTER_CHANGE, changes.size() + 1, clock.quantity(), change.isEmpty()));
        }
        return changes;
    }

    private static List<Timeline.Moment> looks(Quantity every, Optional<Quantity> takes) {
        List<Timeline.Moment> looks = new ArrayList<>();
        Minutes rhythm = Minutes.of(every);
        double end = takes.map(time -> time.highIn(Unit.MINUTE)).orElse(rhythm.high());
        for (int number = 1; number <= MOST_LOOKS && rhythm.low() > 0 && rhythm.low() * number <= end; number++) {
            looks.add(new Timeline.Moment(LOOK, number, rhythm.times(number).quantity(), false));
        }
        return looks;
    }
}
